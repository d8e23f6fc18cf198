/** `npm run check` step: prints the licence of every package that ships; exit code 1 where one is not permissive. */
import { shippedPackages } from '../licences.ts';

export function run(args: string[]): number {
  const packages = shippedPackages();
  if (args.includes('--json')) console.log(JSON.stringify(packages, null, 2));
  else
    for (const { name, version, licence } of packages)
      console.log(`${licence.padEnd(14)} ${name} ${version}`);
  const refused = packages.filter(({ permissive }) => !permissive);
  for (const { name, licence } of refused) console.error(`${name}: ${licence} is not a permissive licence`);
  return refused.length > 0 ? 1 : 0;
}
