import { Global, Module } from '@nestjs/common';
import { Journal } from './journal.js';

@Global()
@Module({ providers: [Journal], exports: [Journal] })
export class JournalModule {}
