import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';
import { designLine } from './app/design-line.ts';

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root');

// The worker designs while the page is being built.
designLine();
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
