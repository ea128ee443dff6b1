// A shop ready to be balanced, as it changes: a new name makes nothing anew, a longer pipe the ducts.

import { computed, type ReadonlySignal } from '@preact/signals-core';
import type { Air } from '../air/air.ts';
import { type CollectorCurve, collectorCurve } from '../curve/collector-curve.ts';
import { networkOf, type ShopNetwork } from '../shop/network-of.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { airOf } from '../shop/shop-air.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import { createWorkspace } from '../solve/workspace.ts';
import { sameData } from './same-data.ts';

/** Keys that no figure depends on: renaming a machine or writing a note solves nothing anew. */
const WORDS: ReadonlySet<string> = new Set(['name', 'note', 'source', 'price', '$schema']);

/** Air, collector and ducts, each computed anew only when its own part of the document changes. */
export function shopModel(shop: ReadonlySignal<Shop>): ReadonlySignal<ShopModel> {
  const airPart = computed(() => shop.value.air);
  const air: ReadonlySignal<Air> = computed(() => airOf(airPart.value));
  const collector = physicalPart(() => shop.value.collector);
  const curve: ReadonlySignal<CollectorCurve> = computed(() =>
    collectorCurve(collector.value, air.value),
  );
  const sections = physicalPart(() => shop.value.sections);
  const drops = physicalPart(() => shop.value.drops);
  const ducts: ReadonlySignal<ShopNetwork> = computed(() => {
    void [sections.value, drops.value];
    return networkOf(shop.peek(), air.value);
  });
  const works = computed(() => ({
    work: createWorkspace(ducts.value.network),
    curveWork: createWorkspace(ducts.value.network),
  }));
  const carryingRange = computed(() => shop.value.carryingRange);
  return computed(() => ({
    air: air.value,
    curve: curve.value,
    ducts: ducts.value,
    carryingRange: carryingRange.value,
    sectionIds: shop.peek().sections.map(({ id }) => id),
    ...works.value,
  }));
}

/** A part of the document that stays the one it was as long as only words in it change. */
function physicalPart<Part>(read: () => Part): ReadonlySignal<Part> {
  let kept: Part | undefined;
  return computed(() => {
    const now = read();
    if (!sameData(kept, now, WORDS)) kept = now;
    return kept as Part;
  });
}
