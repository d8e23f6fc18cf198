/** Generated from shared/words/en/caution.yaml by `npm run words`; do not edit. */
export interface CautionWords {
  'caution.whichPort.title': never;
  'caution.whichPort.text': never;
  'caution.whichPort.safe': never;
  'caution.whichPort.go': never;
  'caution.highOpen.title': never;
  'caution.highOpen.text': never;
  'caution.highOpen.safe': never;
  'caution.highOpen.go': never;
  'caution.canOpen.title': never;
  'caution.canOpen.text': never;
  'caution.canOpen.safe': never;
  'caution.canOpen.go': never;
  'caution.goggles.title': never;
  'caution.goggles.text': never;
  'caution.goggles.safe': never;
  'caution.goggles.go': never;
  'caution.hoseInZone.title': never;
  'caution.hoseInZone.text': never;
  'caution.hoseInZone.safe': never;
  'caution.hoseInZone.go': never;
  'caution.doorStart.title': never;
  'caution.doorStart.text': never;
  'caution.doorStart.safe': never;
  'caution.doorStart.go': never;
  'caution.doorShut.title': never;
  'caution.doorShut.text': never;
  'caution.doorShut.safe': never;
  'caution.doorShut.go': never;
  'caution.slim.door': never;
  'caution.slim.openDoor': never;
  'caution.slim.hose': never;
}
