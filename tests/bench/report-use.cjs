// Loaded into a measured program before its own code: when it ends, it writes what it used into the file USE_REPORT.
// Node tells a parent nothing about the memory of its children, so the child has to say it. CommonJS, as that loads in no
// time: what is measured is the program.

'use strict';

const { writeFileSync } = require('node:fs');

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  const report = { peakKilobytes: maxRSS, cpuMilliseconds: (userCPUTime + systemCPUTime) / 1000 };
  writeFileSync(process.env['USE_REPORT'] ?? 'use.json', JSON.stringify(report));
});
