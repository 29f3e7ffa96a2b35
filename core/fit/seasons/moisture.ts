/**
 * Moisture content in percent that wood comes to in air of a humidity (percent) and temperature (°C).
 * Wood Handbook, FPL-GTR-282, Eq 4-5 with the constants for °C; GTR-190, Table 4-2 has the same, rounded.
 *
 * @example moistureContent(50, 21.1) // 9.24
 */
export function moistureContent(humidity: number, celsius: number): number {
  if (!(humidity >= 0 && humidity <= 100) || !Number.isFinite(celsius))
    throw new RangeError(`moistureContent: no such air: ${humidity} %, ${celsius} °C`);
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = (k * humidity) / 100;
  const bound = kh / (1 - kh);
  const layers = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
  return (1800 / w) * (bound + layers);
}
