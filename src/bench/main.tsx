import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './page/tokens.css';
import './page/page.css';
import './surface/surface.css';
import { Page } from './page/Page.tsx';
import { begin } from './state/begin.ts';

const root = document.getElementById('page');
if (root) createRoot(root).render(<StrictMode>{<Page />}</StrictMode>);
void begin(new URL(location.href));
