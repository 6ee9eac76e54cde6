/** The part of psychrolib (which ships no types) that serves as an oracle; pressures in Pa. */
declare module "psychrolib" {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(celsius: number): number;
    GetTDewPointFromRelHum(celsius: number, humidityShare: number): number;
  };
  export default psychrolib;
}
