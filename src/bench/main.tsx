import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './page/tokens.css';
import './page/page.css';
import './surface/surface.css';
import { Spoken } from './page/Spoken.tsx';
import { begin } from './state/begin.ts';
import { measureAsCard, speakFirst } from './state/language.ts';

measureAsCard();
await speakFirst();
const root = document.getElementById('page');
if (root)
  createRoot(root).render(
    <StrictMode>
      <Spoken />
    </StrictMode>,
  );
void begin(new URL(location.href));
