import { render } from 'preact';
import { App } from './app.tsx';
import { followServer } from './follow-server.ts';
import { openInspection } from './inspection-state.ts';
import { listenForKeys } from './keys.ts';
import './style/index.css';

await openInspection();
followServer();
listenForKeys();
render(<App />, document.getElementById('page')!);
