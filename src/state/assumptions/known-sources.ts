// Sources of laws and habits that stand in no table.

import type { Provenance } from '../../duct/provenance.ts';

/** What a hose that is pushed together loses more. */
export const HOSE_SOURCE: Provenance = {
  citation: 'B. Abushakra, I. S. Walker, M. H. Sherman, HVAC&R Research 10, 2004',
  status: 'from memory, unverified',
};

/** What the streams of a wye lose to each other. */
export const WYE_SOURCE: Provenance = {
  citation: 'The form of I. E. Idelchik, ch. 7, and Crane TP-410, example 7-35',
  status: 'verified',
};

/** How much a shut gate leaks. */
export const LEAK_SOURCE: Provenance = { citation: '', status: 'common practice, no source' };

/** What the slot of an open gate loses. */
export const SLOT_SOURCE: Provenance = { citation: '', status: 'from memory, unverified' };
