// Entry of the page as one HTML file.
import './broken.js';
import './frame.js';
import init from 'till-morning-glue';
import { part } from './parts_single.js';
import { start } from './outcome.js';

start(() => init({ module_or_path: part('main') }));
