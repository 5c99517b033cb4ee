import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Begins with the file that takes longest by far, the one in the browser, so that no core waits for it at the end. */
export class BrowserFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const inBrowser = ({ moduleId }: TestSpecification) => moduleId.includes('/browser/');
    return [...sorted.filter(inBrowser), ...sorted.filter((file) => !inBrowser(file))];
  }
}
