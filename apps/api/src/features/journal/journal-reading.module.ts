import { Module } from '@nestjs/common';
import { JournalController } from './journal.controller.js';
import { JournalReader } from './journal-reader.js';

@Module({ controllers: [JournalController], providers: [JournalReader] })
export class JournalReadingModule {}
