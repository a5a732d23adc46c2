import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { RULE_SETS } from '@strutbook/domain/release/rule-sets.js';
import { RuleSetDto } from './rule-set.dto.js';

@ApiTags('fleet')
@Controller('rule-sets')
export class RuleSetsController {
  /** The rule sets an airframe can be maintained under. */
  @Get()
  list(): RuleSetDto[] {
    return RULE_SETS.map((ruleSet) => ({ ...ruleSet }));
  }
}
