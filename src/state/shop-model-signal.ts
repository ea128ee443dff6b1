// A shop ready to be balanced, as it changes: a new name makes nothing anew, a longer pipe the ducts.

import { computed, type ReadonlySignal } from '@preact/signals-core';
import type { Air } from '../air/air.ts';
import { type CollectorCurve, collectorCurve } from '../curve/collector-curve.ts';
import { networkOf, type ShopNetwork } from '../shop/network-of.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { airOf } from '../shop/shop-air.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import { createWorkspace } from '../solve/workspace.ts';
import { collectorText, ductsText } from './physical-part.ts';

/** Air, collector and ducts, each computed anew only when its own part of the document changes. */
export function shopModel(shop: ReadonlySignal<Shop>): ReadonlySignal<ShopModel> {
  const airPart = computed(() => shop.value.air);
  const air: ReadonlySignal<Air> = computed(() => airOf(airPart.value));
  const collectorPart = computed(() => collectorText(shop.value));
  const curve: ReadonlySignal<CollectorCurve> = computed(() => {
    void collectorPart.value;
    return collectorCurve(shop.peek().collector, air.value);
  });
  const sections = computed(() => shop.value.sections);
  const drops = computed(() => shop.value.drops);
  const ductsPart = computed(() => ductsText({ sections: sections.value, drops: drops.value }));
  const ducts: ReadonlySignal<ShopNetwork> = computed(() => {
    void ductsPart.value;
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
