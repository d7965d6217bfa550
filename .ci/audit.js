// Known holes in the packages that are given on. A registry that does not answer is no reason to fail.
import { spawnSync } from 'node:child_process';

const run = spawnSync('npm', ['audit', '--omit=dev', '--json'], {
  encoding: 'utf8',
  timeout: 60_000,
  shell: process.platform === 'win32',
});
let found;
try {
  found = JSON.parse(run.stdout).metadata.vulnerabilities;
} catch {
  console.log('Audit: not run, the registry did not answer.');
  process.exit(0);
}
const { critical = 0, high = 0, total = 0 } = found;
console.log(`Audit: ${total} known holes, ${high + critical} of them high or critical.`);
if (high + critical > 0) process.exitCode = 1;
