import { type PlantLook } from "./log";

/**
 * The words beside the figures 0 to 3 of how a plant looks: 0 is as it should be, 2 and 3 are trouble.
 *
 * Feeds the plant columns of a log and the boxes of the watch sheet. Common practice, no source.
 */
export const plantScale: Readonly<Record<keyof PlantLook, readonly [string, string, string, string]>> = {
  newGrowth: ["sound", "a little pale or small", "pale or burnt", "none or dying"],
  posture: ["upright", "a little slack", "limp", "lying down"],
  spread: ["none", "a few leaves", "half the plant", "all of it"],
  roots: ["white", "cream", "brown", "dark and soft"],
};
