import './jitless';
import './theme/fonts.css';
import './theme/tokens.css';
import './theme/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Shell } from './app/shell';

const root = document.getElementById('app');
if (root === null) throw new Error('the page has no place for the app');
createRoot(root).render(<StrictMode><Shell /></StrictMode>);
