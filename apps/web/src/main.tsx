import './gallery/states/install.js';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Providers } from './app/providers.js';
import { startConnectionWatch } from './server/connection.js';
import './theme/theme.css';

const root = document.getElementById('root');
if (root === null) throw new Error('The page has no element with the id "root"');

startConnectionWatch();

createRoot(root).render(
  <StrictMode>
    <Providers />
  </StrictMode>,
);
