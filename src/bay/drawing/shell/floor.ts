/** What lies under everything: floor, frame rails, aprons and the padded firewall. */
import type { Shell } from '../../../layout/layout';
import { across, front, lit } from '../paints';
import { circle, polygon, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, repeat, shape, stroke } from '../record';

export function floor({ left, right, firewall, nose }: Shell): Drawing {
  const room = roundRect(left + 130, firewall + 60, right - left - 260, nose - firewall - 90, 60);
  const well = roundRect(left + 190, firewall + 100, right - left - 380, nose - firewall - 160, 60);
  return [
    fill(
      polygon([
        [left - 20, firewall - 60],
        [right + 20, firewall - 60],
        [right + 20, nose + 130],
        [left - 20, nose + 130],
      ]),
      lit('floor'),
    ),
    fill(room, 'shadow', 0.34),
    fill(well, 'shadow', 0.3),
    ...rail(left + 104, firewall, nose),
    ...rail(right - 150, firewall, nose),
    ...aprons(left, right, firewall, nose),
    ...firewallPad(left, right, firewall),
  ];
}

const rail = (x: number, firewall: number, nose: number): Drawing => [
  shape(roundRect(x, firewall, 46, nose - firewall + 60, 6), across('floor'), 'floor-d', 2),
  ...repeat(5, (i) => fill(circle(x + 23, firewall + 150 + i * 150, 8), 'floor-d')),
];

function aprons(left: number, right: number, firewall: number, nose: number): Drawing {
  const half = (firewall + nose) / 2;
  const side = (x: number, s: 1 | -1): string =>
    `M${x - s * 30} ${firewall - 40}H${x + s * 70}Q${x + s * 96} ${firewall + 120} ${x + s * 92} ${half}` +
    `Q${x + s * 90} ${nose - 60} ${x + s * 108} ${nose + 40}H${x - s * 30}Z`;
  const windows = [0.18, 0.42, 0.66, 0.86].flatMap((share) => {
    const y = mm(firewall + (nose - firewall) * share);
    return [
      stroke(roundRect(left + 28, y, 44, 70, 14), 'apron-c', 3, 0.8),
      stroke(roundRect(right - 72, y, 44, 70, 14), 'apron-c', 3, 0.8),
    ];
  });
  return [
    shape(side(left, 1), across('apron'), 'apron-d', 2),
    shape(side(right, -1), across('apron'), 'apron-d', 2),
    ...windows,
  ];
}

function firewallPad(left: number, right: number, firewall: number): Drawing {
  const w = right - left + 20;
  return [
    shape(roundRect(left - 10, firewall - 30, w, 74, 8), front('pad'), 'pad-d', 2),
    stroke(`M${left} ${firewall + 44}H${right}`, 'pad-h', 2, 0.5),
    ...repeat((right - left - 20) / 64, (i) => {
      const x = left + 20 + i * 64;
      return [
        bar(x, firewall - 20, x + 26, firewall + 38, 'pad-d', 2, 0.5),
        bar(x + 26, firewall - 20, x, firewall + 38, 'pad-d', 2, 0.5),
      ];
    }),
    fill(roundRect(left - 10, firewall + 40, w, 70, 0), 'shadow', 0.28),
  ];
}
