// What a law of pipe friction must tell: the Darcy factor and how it changes with Reynolds number.
// The solver takes the law as a strategy, so that it can be held against another one.

/** A law of pipe friction, with the Darcy (not the Fanning) factor: pressure loss = f · L/D · VP. */
export interface FrictionLaw {
  /** A short name, shown in reports. */
  readonly name: string;

  /**
   * The Darcy friction factor f.
   *
   * @param reynolds - Reynolds number V·D·ρ/μ, above 0 [-]
   * @param relativeRoughness - roughness over inside diameter, 0 to 0.1 [-]
   * @returns friction factor, continuous in both [-]
   */
  factor(reynolds: number, relativeRoughness: number): number;

  /**
   * The exact derivative df/dRe of `factor`.
   *
   * @param reynolds - Reynolds number, above 0 [-]
   * @param relativeRoughness - roughness over inside diameter, 0 to 0.1 [-]
   * @returns slope of the friction factor, continuous in Reynolds number save where the law is not [-]
   */
  slope(reynolds: number, relativeRoughness: number): number;
}
