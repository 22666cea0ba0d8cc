import { stickyShed as rule } from '../../condition/rules/sticky-shed.ts';
import { findingCheck } from '../finding-check.ts';

export const stickyShed = findingCheck({ code: 'condition/sticky-shed', rule, restsOn: 'stock' });
