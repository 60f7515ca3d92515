import * as library from './flatwork-reckoner.js';
import { outcomesOf, trialsOf } from './trials.js';

globalThis.outcomes = await outcomesOf(trialsOf(library));
