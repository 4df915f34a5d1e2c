// Small texts that the tests of the command line check.

export const box = (acts: string): string => `unit box "Box" {
  base foot
  part foot "Foot" { mass 3 kg }
  part lid "Lid" { mass 2 kg }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
}
procedure strip "Strip" for box {
  aim lid off
  step "Open" {
    ${acts}
  }
}
`;
/** Nothing is found in it. */
export const good = box("undo lid-screws\n    remove lid");
/** sequence/still-held, an error. */
export const held = box("undo 2 of lid-screws\n    remove lid");
