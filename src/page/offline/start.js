// Entry of the hosted page: its one script, packed with the wasm glue.
import './register.js';
import init from 'till-morning-glue';
import { start } from './outcome.js';

start(() => init({ module_or_path: new URL(WASM_FILE, import.meta.url) }));
