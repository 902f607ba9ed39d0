// Entry of the hosted page: its one script, packed with the wasm glue.
import './broken.js';
import './frame.js';
import './register.js';
import init from 'till-morning-glue';
import { start } from './outcome.js';
import { begin } from './parts.js';

const page = init({ module_or_path: new URL(WASM_FILE, import.meta.url) });
begin();
start(() => page);
