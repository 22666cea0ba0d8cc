import { storage as rule } from '../../condition/rules/storage.ts';
import { findingCheck } from '../finding-check.ts';

export const storage = findingCheck({ code: 'condition/storage', rule, restsOn: 'place' });
