import { render } from 'preact';
import { App } from './app.tsx';
import { openInspection } from './inspection-state.ts';
import { listenForKeys } from './keys.ts';
import { followServer } from './server-link.ts';
import './style/index.css';

await openInspection();
followServer();
listenForKeys();
render(<App />, document.getElementById('page')!);
