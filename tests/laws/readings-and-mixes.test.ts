import fc from "fast-check";
import { createUnit, unit } from "mathjs";
import { describe, expect, it } from "vitest";
import {
  type Analyte, blendEc, blendShare, days, dewPoint, airCelsius, dilution, ec25, ecAsRead, ecAt25, ecAtTemperature, ecFromPpm, ecInUnit,
  type EcUnit, ecUnits, feedGrams, gramsPerLitre, humidityPercent, labelPercent, labelPpm, leachingShare, litres, nernstSlope, phBuffer,
  ppmOfEc, ppmRescale, ppmScale, recoveryFeed, solutionCelsius, stockDose, stockStrength, swapOut, vapourPressureDeficit,
} from "../../src/index";

const ec = fc.double({ min: 0.1, max: 20, noNaN: true });
const volume = fc.double({ min: 0.1, max: 2000, noNaN: true });
const celsius = fc.double({ min: 0, max: 50, noNaN: true });
const scale = fc.double({ min: 400, max: 1000, noNaN: true }).map((value) => ppmScale(value));
const share = fc.double({ min: 0.01, max: 1, noNaN: true }).map((value) => leachingShare(value));
const ecUnit = fc.constantFrom(...(Object.keys(ecUnits) as EcUnit[]));
const mathjsName = (name: EcUnit): string => (name === "CF" ? "conductivityFactor" : name);
createUnit("conductivityFactor", "0.1 mS/cm");
const close = (a: number, b: number, relative = 1e-9): boolean => Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b), 1e-6);

/** Water, target, tank: each at least 0.1 mS/cm above the one before. */
const three = fc
  .tuple(ec, fc.double({ min: 0.1, max: 5, noNaN: true }), fc.double({ min: 0.1, max: 5, noNaN: true }))
  .map(([water, up, further]) => [ec25(water), ec25(water + up), ec25(water + up + further)] as const);

describe("readings", () => {
  it("ecAtTemperature undoes ecAt25 at 0 to 50 C", () => {
    fc.assert(fc.property(ec, celsius, (read, t) => close(ecAtTemperature(ecAt25(ecAsRead(read), solutionCelsius(t)), solutionCelsius(t)), read)));
  });

  it("a warmer solution of one reading has the lower EC at 25 C", () => {
    fc.assert(fc.property(ec, celsius, celsius, (read, a, b) => {
      fc.pre(a < b);
      return ecAt25(ecAsRead(read), solutionCelsius(a)) >= ecAt25(ecAsRead(read), solutionCelsius(b));
    }));
  });

  it("ecInUnit there and back is the same EC, and agrees with mathjs", () => {
    fc.assert(fc.property(ec, ecUnit, ecUnit, (value, from, to) => close(ecInUnit(ecInUnit(value / 100, from, to), to, from), value / 100)));
    fc.assert(fc.property(ec, ecUnit, ecUnit, (value, from, to) => close(ecInUnit(value / 100, from, to), unit(value / 100, mathjsName(from)).toNumber(mathjsName(to)))));
  });

  it("ecFromPpm undoes ppmOfEc; ppmRescale by way of a third scale is the direct one", () => {
    fc.assert(fc.property(ec, scale, (value, on) => close(ecFromPpm(ppmOfEc(ec25(value), on), on), value)));
    fc.assert(fc.property(ec, scale, scale, scale, (value, a, b, c) => {
      const start = ppmOfEc(ec25(value), a);
      return close(ppmRescale(ppmRescale(start, a, b), b, c), ppmRescale(start, a, c));
    }));
  });

  it("phBuffer runs through without a step: 0.01 C moves no buffer by 0.001", () => {
    fc.assert(fc.property(fc.constantFrom("4.01", "6.86", "7.00", "9.18", "10.01"), fc.double({ min: 0, max: 49.99, noNaN: true }), (buffer, t) =>
      Math.abs(phBuffer(buffer, solutionCelsius(t + 0.01)) - phBuffer(buffer, solutionCelsius(t))) < 0.001));
  });

  it.each([[0, 54.199], [5, 55.191], [10, 56.183], [15, 57.175], [20, 58.167], [25, 59.159], [30, 60.151], [40, 62.136], [50, 64.12]])(
    "nernstSlope at %d C is %d mV (ln 10 R T / F, CODATA 2018)",
    (t, slope) => {
      expect(nernstSlope(solutionCelsius(t))).toBeCloseTo(slope, 2);
    },
  );
});

describe("mixes", () => {
  it("a tank thinned by dilution blends to its target, and its salt stays the same", () => {
    fc.assert(fc.property(three, volume, ([water, target, now], tank) => {
      const added = dilution({ litres: litres(tank), ec: now }, target, water);
      const mixed = blendEc([{ litres: litres(tank), ec: now }, { litres: added, ec: water }]);
      return close(mixed, target) && close(tank * now + added * water, (tank + added) * target);
    }));
  });

  it("a tank after a swap blends to its target, and less is drained than it holds or than dilution adds", () => {
    fc.assert(fc.property(three, volume, ([water, target, now], tank) => {
      const swapped = swapOut({ litres: litres(tank), ec: now }, target, water);
      const mixed = blendEc([{ litres: litres(tank - swapped), ec: now }, { litres: swapped, ec: water }]);
      return close(mixed, target) && swapped < tank && swapped < dilution({ litres: litres(tank), ec: now }, target, water);
    }));
  });

  it("a lower target needs more water, saltier water needs more of it", () => {
    fc.assert(fc.property(three, volume, ([water, target, now], volumeNow) => {
      const tank = { litres: litres(volumeNow), ec: now };
      const lower = ec25((target + water) / 2);
      const purer = ec25(water / 2);
      return dilution(tank, lower, water) > dilution(tank, target, water) && dilution(tank, target, purer) < dilution(tank, target, water);
    }));
  });

  it("a blend lies between its parts, whatever their order and the unit of volume", () => {
    const part = fc.record({ litres: volume.map((value) => litres(value)), ec: ec.map((value) => ec25(value)) });
    fc.assert(fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), (parts) => {
      const blend = blendEc(parts);
      const inGallons = blendEc(parts.map((each) => ({ ...each, litres: litres(each.litres / 3.785411784) })));
      const ecs = parts.map((each) => each.ec);
      const within = blend >= Math.min(...ecs) - 1e-9 && blend <= Math.max(...ecs) + 1e-9;
      return within && close(blend, blendEc([...parts].reverse())) && close(blend, inGallons);
    }));
  });

  it("blendShare of A and B makes the blend it was asked for", () => {
    fc.assert(fc.property(three, ([weak, target, strong]) => {
      const ofStrong = blendShare(strong, weak, target);
      const blend = blendEc([{ litres: litres(ofStrong), ec: strong }, { litres: litres(1 - ofStrong), ec: weak }]);
      return close(blend, target) && close(ofStrong + blendShare(weak, strong, target), 1);
    }));
  });

  it("stockDose raises the EC of its water by what was asked for", () => {
    fc.assert(fc.property(three, volume, fc.double({ min: 0.05, max: 5, noNaN: true }), ([water, target], tank, strength) => {
      const dose = stockDose({ litres: litres(tank), ec: water }, target, stockStrength(strength));
      return close(water + (dose / tank) * strength, target);
    }));
  });
});

describe("feeds", () => {
  const analyte = fc.constantFrom<Analyte>("N", "P", "K", "Fe", "P2O5", "K2O", "CaO", "MgO", "SO3", "NO3", "NH4", "SiO2");

  it("feedGrams undoes labelPpm", () => {
    fc.assert(fc.property(volume, fc.double({ min: 0.01, max: 300, noNaN: true }), fc.double({ min: 0.1, max: 100, noNaN: true }), analyte, (tank, perLitre, percent, name) => {
      fc.pre(percent > 1 || perLitre < 10);
      const target = labelPpm(gramsPerLitre(perLitre), labelPercent(percent), name);
      return close(feedGrams(litres(tank), target, { percent: labelPercent(percent), analyte: name }), perLitre * tank);
    }));
  });

  it("recoveryFeed never falls from one day to the next, starts above the water and never passes the full feed", () => {
    fc.assert(fc.property(three, share, fc.integer({ min: 1, max: 60 }), ([water, , full], startShare, toFull) => {
      const ramp = { startShare, daysToFull: days(toFull) };
      const course = Array.from({ length: toFull + 3 }, (_, day) => recoveryFeed({ full, water }, days(day), ramp));
      const rises = course.every((value, day) => value >= (course[day - 1] ?? 0) - 1e-12);
      return rises && (course[0] ?? 0) > water && Math.max(...course) <= full + 1e-12 && close(course[toFull] ?? 0, full);
    }));
  });
});

describe("air", () => {
  it("drier air has the larger deficit and the lower dew point, which stays at or below the air's temperature", () => {
    const wetness = fc.double({ min: 2, max: 100, noNaN: true });
    fc.assert(fc.property(celsius, wetness, wetness, (t, a, b) => {
      fc.pre(a + 0.01 < b);
      const [dry, wet] = [humidityPercent(a), humidityPercent(b)];
      const isDrier = vapourPressureDeficit(airCelsius(t), dry) > vapourPressureDeficit(airCelsius(t), wet);
      return isDrier && dewPoint(airCelsius(t), dry) < dewPoint(airCelsius(t), wet) && dewPoint(airCelsius(t), wet) <= t + 1e-9;
    }));
  });
});
