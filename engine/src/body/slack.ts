/** Millimetres by which binary fractions may part equal lengths: 30½ in less 30 in is half an inch. */
export const SLACK = 1e-6;
