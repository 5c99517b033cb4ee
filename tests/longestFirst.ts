import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What takes longest, longest first: the page in a browser by far. */
const longest = [
  '/browser/page',
  '/check/fixtures',
  '/cli/contract',
  '/cli/journal',
  '/check/',
  '/net/fixtures',
  '/findOutline',
  '/printPlan',
  '/crossings',
];

/** Begins with the files that take longest, so that no core waits for one of them at the end. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const at = longest.findIndex((part) => moduleId.includes(part));
      return at < 0 ? longest.length : at;
    };
    return (await super.sort(files)).sort((a, b) => place(a) - place(b));
  }
}
