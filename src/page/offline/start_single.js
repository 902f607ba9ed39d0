// Entry of the page as one HTML file.
import './frame.js';
import init from 'till-morning-glue';
import { part } from './parts_single.js';
import { start } from './outcome.js';

start(() => init({ module_or_path: part('main') }));
