// The air in the ducts, as the rest of the core sees it.
// Taken as incompressible and at room temperature throughout: 2.5 kPa is 2.5 % of its density.

/** Density [kg/m³], dynamic viscosity [Pa·s] and absolute pressure of the room [Pa]. */
export interface Air {
  readonly density: number;
  readonly viscosity: number;
  readonly pressure: number;
}
