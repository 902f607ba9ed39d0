// Entry of the hosted page: its one script, packed with the wasm glue.
import './frame.js';
import './register.js';
import init from 'till-morning-glue';
import { bring } from './later.js';
import { start } from './outcome.js';

const beside = (name) => new URL(name, import.meta.url);
const page = init({ module_or_path: beside(WASM_FILE) });
bring([beside(KEEPING_FILE), beside(LATER_FILE)], page);
start(() => page);
