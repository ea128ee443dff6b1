// Words that links write as one or two characters. Links hold their places in these lists: new ones
// are added at the end, and none is ever moved or taken out.

/** Keys of the document, by one character each: their place in `KEY_SIGNS`. */
export const KEYS: readonly string[] = (
  'format version units name note air collector carryingRange sections drops gateSets ' +
  'low high id open into pipe length compression fittings join transition ' +
  'kind family size roughness diameter angle coefficient of radius count pieces ' +
  'hood port gate need machine suction velocity travel leak slotLoss ' +
  'curve speedRatio wheelRatio filter separator source basis includes density speed wheelDiameter ' +
  'points power efficiency nameplate price flow pressure amount currency ' +
  'altitude temperature humidity viscosity resistance blinding area testPressure testVelocity $schema'
).split(' ');

/** A sign for each key. */
export const KEY_SIGNS =
  'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_+/!?%&()[]{}<>:;,|@^';

/** Texts that stand in many shops. */
export const WORDS: readonly string[] = (
  'catalogue custom momentum fixed own combined taper sudden plain bend mitre gored table ' +
  'coefficient measured room none resistance media fan-static tap total ' +
  'galvanised-spiral galvanised-snap-lock pvc-sewer-d2729 pvc-schedule-40 pvc-sdr-35 ' +
  'pvc-sewer-en-1401 hose-wire-helix hose-smooth-bore ' +
  'plain-end flanged-end bell-mouth cabinet cabinet-open cabinet-tight floor-sweep ' +
  'grinder-straight grinder-tapered tapered-round-45 tapered-round-90 tapered-square-45 ' +
  'tapered-square-90 band-saw disc-sander drum-sander jointer lathe mitre-saw pendulum-saw planer ' +
  'planer-410 planer-520 router-table spindle-moulder spindle-moulder-small table-saw ' +
  'table-saw-250 table-saw-315 table-saw-over-315 3in 4in 5in 6in 7in 8in 10in 12in EUR USD ' +
  'dropcurve-shop dropcurve-curve SI'
).split(' ');
