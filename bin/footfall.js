#!/usr/bin/env node
// What the shell starts. The program itself is bundled from src/cli/main.ts into dist/ by `npm run build`.
import '../dist/main.js';
