/**
 * A round pipe filled to a part of its height. All arguments and results are shares from 0 to 1 of the full pipe.
 * With x the depth share and θ = 2·arccos(1 − 2x): area (θ − sin θ)/2π, wetted perimeter θ/2π, hydraulic radius
 * 1 − sin θ/θ, velocity (R/Rf)^⅔ and flow A·V for a roughness that does not change with depth (Manning).
 */

function angle(depthShare: number): number {
  return 2 * Math.acos(1 - 2 * Math.min(1, Math.max(0, depthShare)));
}

export function areaShare(depthShare: number): number {
  const theta = angle(depthShare);
  return (theta - Math.sin(theta)) / (2 * Math.PI);
}

export function wettedPerimeterShare(depthShare: number): number {
  return angle(depthShare) / (2 * Math.PI);
}

export function hydraulicRadiusShare(depthShare: number): number {
  const theta = angle(depthShare);
  return theta === 0 ? 0 : 1 - Math.sin(theta) / theta;
}

/** Width of the water surface as a share of the diameter. */
export function surfaceWidthShare(depthShare: number): number {
  return 2 * Math.sqrt(Math.max(0, depthShare * (1 - depthShare)));
}

export function velocityShare(depthShare: number): number {
  return hydraulicRadiusShare(depthShare) ** (2 / 3);
}

export function flowShare(depthShare: number): number {
  return areaShare(depthShare) * velocityShare(depthShare);
}

/** The depth share that fills this share of the area. Found by halving: the area only grows with depth. */
export function depthShareForArea(share: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (areaShare(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Velocity of a full pipe in feet a second by Manning's formula, US units.
 * @param insideFeet true inside diameter in feet
 * @param slope fall over length, no unit
 * @param roughness Manning's n
 */
export function fullVelocityFeetPerSecond(insideFeet: number, slope: number, roughness: number): number {
  return (1.486 / roughness) * (insideFeet / 4) ** (2 / 3) * Math.sqrt(slope);
}
