import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';
import { followAddress } from './state/address.ts';
import { onThreads } from './state/away/onThreads.ts';
import { connect } from './state/host.ts';
import { createStudio } from './state/studio.ts';
import { chosenAppearance, showAppearance } from './theme/appearance.ts';
import './theme/fonts.css';
import './theme/tokens.css';
import './theme/base.css';

showAppearance(chosenAppearance());
const studio = createStudio({ host: connect(), away: onThreads() });
followAddress(studio, window);
void studio.start();

const root = document.getElementById('studio');
if (root === null) throw new Error('index.html has no place for the studio');
createRoot(root).render(
  <StrictMode>
    <App studio={studio} />
  </StrictMode>,
);
