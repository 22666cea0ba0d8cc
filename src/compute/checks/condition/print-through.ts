import { printThrough as rule } from '../../condition/rules/print-through.ts';
import { findingCheck } from '../finding-check.ts';

export const printThrough = findingCheck({ code: 'condition/print-through', rule, restsOn: 'pack' });
