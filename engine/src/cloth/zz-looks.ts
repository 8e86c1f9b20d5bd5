export const looks: Record<string, unknown> = {
  flaredcasing: { waist: { kind: 'separate casing' } },
  flaredpocket: { waist: { kind: 'separate casing' }, extras: { pockets: {} } },
  halfcircle: {
    cut: { kind: 'circle', fraction: '1/2' },
    waist: { kind: 'separate casing' },
    body: { waistToHem: '26 in' },
    cloth: { width: '60 in' },
  },
  fullcircle2: {
    cut: { kind: 'circle', fraction: 'full', pieces: 2 },
    body: { waistToHem: '22 in' },
    cloth: { width: '60 in' },
  },
  fullcircle4: {
    cut: { kind: 'circle', fraction: 'full', pieces: 4 },
    body: { waistToHem: '28 in' },
    cloth: { width: '45 in' },
  },
  circle1: {
    cut: { kind: 'circle', fraction: 'full', pieces: 1 },
    body: { waistToHem: '16 in', waist: '22 in', hip: '24 in', age: 6 },
    cloth: { width: '60 in' },
  },
  tiered: { cut: { kind: 'tiered' }, waist: { kind: 'separate casing' } },
  gathered3: {
    cut: { kind: 'gathered', widths: 3 },
    waist: { kind: 'plain waistband' },
    extras: { pockets: {} },
  },
};
Object.assign(looks, {
  lined: { cut: { kind: 'gathered', widths: 2 }, waist: { kind: 'plain waistband' }, extras: { lining: {}, pockets: { cloth: 'lining' } } },
  knitband: { cut: { kind: 'gathered', widths: 2 }, waist: { kind: 'stretch band' } },
  drawstring: { cut: { kind: 'gathered', widths: 2 }, waist: { kind: 'drawstring' } },
});
