import { useBench } from '../state/store.ts';
import { Page } from './Page.tsx';

/** The page, laid out anew when another language or unit is chosen. */
export function Spoken() {
  const said = useBench(({ language, card }) => `${language} ${card.show_inches ? 'inch' : 'mm'}`);
  return <Page key={said} />;
}
