// What we use of psychrolib (npm, MIT), which ships without types.
// Its units depend on a setting held in the instance; see moist-air.ts.

declare module 'psychrolib' {
  export interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetVapPresFromRelHum(temperature: number, humidity: number): number;
    GetHumRatioFromVapPres(vapourPressure: number, pressure: number): number;
    GetMoistAirDensity(temperature: number, humidityRatio: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  }

  const shared: Psychrometrics & { readonly constructor: new () => Psychrometrics };
  export default shared;
}
