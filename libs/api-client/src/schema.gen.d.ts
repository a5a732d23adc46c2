// Generated from openapi.json by `npm run contract`. Do not edit.

export interface paths {
    "/api/accomplishments": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records by hand that a requirement was met, with what proves it: for work done before or elsewhere. */
        post: operations["accomplishmentsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/accomplishments/{id}/correct": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an accomplishment and records what it should have said, in one act; what is due follows. */
        post: operations["accomplishmentsCorrect"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/accomplishments/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an accomplishment that was recorded wrongly. */
        post: operations["accomplishmentsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframe-types": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All types of airframe, with their positions. */
        get: operations["airframeTypesList"];
        put?: never;
        /** Adds a type of airframe with its positions. */
        post: operations["airframeTypesAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All airframes, with their positions and what they have flown. */
        get: operations["airframesList"];
        put?: never;
        /** Adds an airframe; its positions, slots and clocks come with it. */
        post: operations["airframesAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One airframe. */
        get: operations["airframesGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/counters": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What an airframe and its positions have run by a moment, and the lines that add up to it. */
        get: operations["countersOfAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/flights": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Flights of an airframe, the newest first. */
        get: operations["flightsPage"];
        put?: never;
        /** Logs flights of an airframe, all or none; says which limits are newly reached or passed. */
        post: operations["flightsLog"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/ground-runs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Runs of an airframe's engines on the ground, the newest first. */
        get: operations["groundRunsPage"];
        put?: never;
        /** Records a run of an engine at a position on the ground. */
        post: operations["groundRunsRecord"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everything that happened to an airframe, in order, with totals and the journal entry behind each line. */
        get: operations["historyOfAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/occurrences": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The events of an airframe that no other record tells, the latest first; voided ones are marked. */
        get: operations["occurrencesList"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/openings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The opening balances of an airframe, voided ones marked. */
        get: operations["openingsOfAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/overruns": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same of an airframe, its positions, and all that was flown over a limit while it hung there. */
        get: operations["overrunsOfAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/planned-flights": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The flights an airframe is planned to make. */
        get: operations["plannedFlyingPlanned"];
        put?: never;
        /** Plans flights, beside those planned already or in their place. */
        post: operations["plannedFlyingPlan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/planned-rates": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What an airframe is planned to fly, the newest rate first. */
        get: operations["plannedFlyingPlannedRates"];
        put?: never;
        /** Records what an airframe is planned to fly from a day on. */
        post: operations["plannedFlyingPlanRate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/positions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What is, or was, at the positions of one airframe. */
        get: operations["positionsOfAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/readiness": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Which of the flights to come may be made, and what they reach. Changes nothing. */
        post: operations["plannedFlyingReady"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/airframes/{id}/requirements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What is held against an airframe, its positions and all that hangs on it, the most pressing first. */
        get: operations["heldRequirementsOnAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/assessments": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records whether a revision of a requirement applies to one subject, to a type or model, or to all it may be for. */
        post: operations["assessmentsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/assessments/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an assessment that was recorded wrongly. */
        post: operations["assessmentsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/authorisations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who may sign what, on which type and until when; of one person or of everyone, ended and voided ones marked. */
        get: operations["authorisationsList"];
        put?: never;
        /** Lets a person sign work, inspections or releases. It counts at once. */
        post: operations["authorisationsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/authorisations/{id}/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Ends an authorisation with a day, past or to come; yesterday ends it at once. Answers the one that stands in its place, good through that day. */
        post: operations["authorisationsEnd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/authorisations/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Voids an authorisation that was recorded wrongly: it never counted. What was signed under it stays in sight, and
         *     is held against packages that are not released yet.
         */
        post: operations["authorisationsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/board": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every airframe with what is at its positions, counters and tightest parts. */
        get: operations["positionsBoard"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a removal, an installation or both as one act, and as a package. */
        post: operations["changesRecord"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/changes/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What a change would record: the instant, the counters of both components, and what is held against it. Nothing is written. */
        post: operations["changesPreview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Components by serial number; search finds parts of serial and part numbers. */
        get: operations["componentsPage"];
        put?: never;
        /** Adds a component; the places in it come with it. */
        post: operations["componentsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One component with its counters, life, limiter and what is in it, now or as it was. */
        get: operations["componentsGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/counter-readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All readings of an auxiliary power unit's counter, the newest first, voided ones too. */
        get: operations["counterReadingsList"];
        put?: never;
        /** Records what the counter showed between installation and removal. */
        post: operations["counterReadingsRead"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/counter-replacements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that the counter was replaced by another one. */
        post: operations["counterReadingsReplace"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/counters": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every counter of a component at a moment: its total, what set it to nothing, and the lines that add up to it. */
        get: operations["countersOfComponent"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/facts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Openings, gaps, acceptances, overhauls, shop visits and ratings of a component, voided ones marked. */
        get: operations["componentFactsOf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everything that happened to an engine, a module or a part, in order. */
        get: operations["historyOfComponent"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/life-status": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The status of the life-limited parts in a component, now or as it was. */
        get: operations["lifeStatusGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/life-status.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same as comma-separated text. */
        get: operations["lifeStatusCsv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/overruns": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** When a component, or what hangs in it now, was flown over a limit or a duty that stood then, the latest first. */
        get: operations["overrunsOfComponent"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/places": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everywhere a component was, voided stays marked. */
        get: operations["componentsPlaces"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/requirements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What is held against a component and all beneath it, the most pressing first. */
        get: operations["heldRequirementsOnComponent"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/components/{id}/serviceability": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether a component may be fitted as its tags, its shop and its place say, with all tags and preservations. */
        get: operations["serviceabilityOf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/counter-flights": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The flights of one line of a counter, and what its clock counted of each. */
        get: operations["countersFlights"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/counter-readings/{id}/correct": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a reading and enters it again as it was. */
        post: operations["counterReadingsCorrect"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/counter-readings/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a reading that was recorded wrongly. */
        post: operations["counterReadingsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/cycle-rules/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a revision that was recorded wrongly. */
        post: operations["cycleRulesVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/documents": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The documents prepared of an airframe or a component. */
        get: operations["documentsList"];
        put?: never;
        /** Begins to prepare a printed document; the job's result names it. */
        post: operations["documentsBegin"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/documents/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The file of a document. */
        get: operations["documentsFile"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/due-points": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What falls due, the most urgent first unless asked otherwise. */
        get: operations["dueListPage"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/due-points.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The whole filtered list as comma-separated text. */
        get: operations["dueListCsv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/due-points.ndjson": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The whole filtered list, a line of JSON for each row. */
        get: operations["dueListLines"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/due-points/totals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How many there are of each status: in all, and by the filters. What is past is told even where a filter leaves it out. */
        get: operations["dueListTotals"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/engine-models": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All models, with their ratings and cycle rules. */
        get: operations["engineModelsList"];
        put?: never;
        /** Adds a model with its ratings and cycle rules. */
        post: operations["engineModelsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/engine-models/{id}/cycle-rules": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All revisions of a model's cycle rules, the newest first, voided ones too. */
        get: operations["cycleRulesList"];
        put?: never;
        /** Records a revision that counts from a day on; what was flown from then on is counted again. */
        post: operations["cycleRulesAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/flights/{id}/correct": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a flight and enters it again as it was; what came or went by its log page moves along. */
        post: operations["flightsCorrect"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/flights/{id}/gap-notes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records why a gap before a flight hides none. */
        post: operations["gapNotesAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/flights/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a flight. */
        post: operations["flightsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/gap-acceptances": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that the worst case was accepted for what is unknown. */
        post: operations["componentFactsAcceptGap"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/gap-acceptances/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an acceptance. */
        post: operations["componentFactsVoidAcceptance"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/gap-notes/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids such a note: the gap blocks releases again. */
        post: operations["gapNotesVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/ground-runs/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a run, at a position or in a test cell. */
        post: operations["groundRunsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Files brought in, the newest first. */
        get: operations["importsPage"];
        put?: never;
        /** Takes a file in and begins its check: JSON with its text, or the file itself as text/csv with its name in the address. */
        post: operations["importsTake"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One file with what its check found. */
        get: operations["importsGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{id}/apply": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Begins to apply a checked file, all of it or nothing. */
        post: operations["importsApply"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Ends the work under way on a file; nothing of it stays. */
        post: operations["importsCancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/imports/{id}/errors.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The errors of a file as CSV. */
        get: operations["importsErrors"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How far a job is, and what it made. */
        get: operations["jobsGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Asks a job to end early. */
        post: operations["jobsCancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/journal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Entries of the journal with their hashes, in order. */
        get: operations["journalPage"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/life-limits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Life limits of all parts, of one part number, or of one model; voided ones are marked. */
        get: operations["lifeLimitsList"];
        put?: never;
        /** Records a life limit from a document's revision. The newest revision that is effective counts. */
        post: operations["lifeLimitsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/life-limits/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a life limit that was recorded wrongly. */
        post: operations["lifeLimitsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/life-limits/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Accepts a new revision, or a directive, as its preview was seen: all its rows in one act. */
        post: operations["lifeLimitsAccept"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/life-limits/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What a new revision of a manual, or a directive, would change, serial by serial; nothing is stored. */
        post: operations["lifeLimitsPreview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/locations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All locations. */
        get: operations["locationsList"];
        put?: never;
        /** Adds a location. */
        post: operations["locationsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/my-work": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The steps that wait for the person of the session, by package. */
        get: operations["workStepsMineNow"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/occurrences": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records an event of an airframe, such as its return to the main base; what is due at it follows. */
        post: operations["occurrencesAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/occurrences/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an event that was recorded wrongly. */
        post: operations["occurrencesVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/openings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a balance brought in from older records. */
        post: operations["openingsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/openings/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an opening balance, so that another can be entered. */
        post: operations["openingsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Work packages, the newest first. */
        get: operations["packagesPage"];
        put?: never;
        /** Opens a package with the steps of a procedure and steps of its own, with what is to be changed and met. */
        post: operations["packagesOpen"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One work package with its order, its changes and its release. */
        get: operations["packagesGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages/{id}/order": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Puts another order in place of the one that stands, confirmed by a second person at the same tablet. */
        post: operations["ordersAmend"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages/{id}/release": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs the release of a package. */
        post: operations["releaseSign"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages/{id}/release-check": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What stands against releasing a package, worst first, and the words that would be signed. */
        get: operations["releaseCheck"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages/{id}/steps": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A package with its steps as they stand: what is captured, signed, missing and open. */
        get: operations["workStepsList"];
        put?: never;
        /** Adds a step that no procedure has to an open package. */
        post: operations["workStepsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/packages/{id}/withdraw": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Gives up an open package in which nothing was moved and nothing is open. */
        post: operations["packagesWithdraw"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everyone of the operator. */
        get: operations["peopleList"];
        put?: never;
        /** Adds someone who may sign in. */
        post: operations["peopleAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/people/{id}/disable": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Shuts someone out and ends their sessions; what they signed stays. */
        post: operations["peopleDisable"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/placements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Puts a component into a slot or to a location; its open stay at a location ends then. */
        post: operations["placementsPlace"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/placements/{stayId}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a stay that was recorded wrongly. */
        post: operations["placementsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/planned-flights/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a planned flight. */
        post: operations["plannedFlyingVoidFlight"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/planned-rates/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a planned rate. */
        post: operations["plannedFlyingVoidRate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/preservations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records how a component was preserved. */
        post: operations["serviceabilityPreserve"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/preservations/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a preservation. */
        post: operations["serviceabilityVoidPreservation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/procedures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Procedures with every revision, by code, the latest revision first. */
        get: operations["proceduresList"];
        put?: never;
        /** Records a revision of a procedure; it is never changed, a later one gets its own. */
        post: operations["proceduresAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/procedures/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One revision of a procedure with its steps. */
        get: operations["proceduresGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/rating-changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records from when an engine runs at a rating. */
        post: operations["componentFactsChangeRating"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/rating-changes/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a change of rating. */
        post: operations["componentFactsVoidRating"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/releases/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A release as it was signed, with the check it froze. */
        get: operations["releaseGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/requirements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All requirements, or those in force; voided ones are marked. */
        get: operations["requirementsList"];
        put?: never;
        /** Records a requirement from a document's revision. The newest revision of a code counts. */
        post: operations["requirementsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/requirements/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One requirement with all it is held against, and when it was met. */
        get: operations["requirementsGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/requirements/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a requirement that was recorded wrongly. */
        post: operations["requirementsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/resets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records an overhaul or shop visit. */
        post: operations["componentFactsAddReset"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/resets/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids an overhaul or shop visit. */
        post: operations["componentFactsVoidReset"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/rule-sets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The rule sets an airframe can be maintained under. */
        get: operations["ruleSetsList"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/serviceability-tags": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a tag: serviceable, unserviceable or quarantine. */
        post: operations["serviceabilityTag"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/serviceability-tags/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a tag. */
        post: operations["serviceabilityVoidTag"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/session": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whose session this is. */
        get: operations["sessionShow"];
        put?: never;
        /** Signs in. The session's token is in a cookie that no script can read. */
        post: operations["sessionBegin"];
        /** Signs out. Without a session there is nothing to end, which is no fault. */
        delete: operations["sessionEnd"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/session/password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Changes one's own password and ends one's other sessions. */
        post: operations["sessionChangePassword"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/session/pin": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Chooses the PIN that signs at a tablet. */
        post: operations["sessionChoosePin"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/shop-visits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Shop visits, the last sent first. */
        get: operations["shopVisitsPage"];
        put?: never;
        /** Sends a component to a shop with a workscope. */
        post: operations["shopVisitsSend"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/shop-visits/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One visit: the build standard before and after, and what changed. */
        get: operations["shopVisitsGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/shop-visits/{id}/return": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records the return with everything the shop did, as one act. */
        post: operations["shopVisitsReturn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/shop-visits/{id}/return/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids the return of a visit with all it recorded; the component is in the shop again. */
        post: operations["shopVisitsVoidReturn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/shop-visits/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a visit; the component is where it was before. */
        post: operations["shopVisitsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/spares": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What is installed nowhere: fit to install, or why not, and what is left in it. */
        get: operations["sparesPage"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/step-entries/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Strikes an entry out; it stays in sight with the reason. */
        post: operations["workStepsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/step-photos/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A picture. */
        get: operations["workStepsPhoto"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/step-signatures/{id}/undo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Undoes a signature: it stays visible and no longer counts. */
        post: operations["signingUndo"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/steps/{id}/entries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records what was captured in a step, exactly as typed, with what is made of it. */
        post: operations["workStepsRecord"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/steps/{id}/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a picture, sent as the body itself. */
        post: operations["workStepsRecordPhoto"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/steps/{id}/signatures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs a step: that it was done, or that another person looked at it. */
        post: operations["signingSign"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/steps/{id}/statement": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The words a signature would be given on, built here, and what keeps the step from being signed. */
        get: operations["signingStatement"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/test-cells": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All test cells with the engines in them. */
        get: operations["testCellsList"];
        put?: never;
        /** Adds a test cell. */
        post: operations["testCellsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/test-cells/{id}/runs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Runs in a test cell, the newest first. */
        get: operations["testCellsPage"];
        put?: never;
        /** Records a run of the engine in a test cell. */
        post: operations["testCellsRecord"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/tool-calibrations/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a calibration that was recorded wrongly; what was accepted by it stays as it was judged. */
        post: operations["toolsVoidCalibration"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/tools": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All tools with their range and whether their calibration is in date, by serial number. */
        get: operations["toolsList"];
        put?: never;
        /** Registers a tool. */
        post: operations["toolsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/tools/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A tool with its calibrations and where it was used. */
        get: operations["toolsGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/tools/{id}/calibrations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a calibration. The newest one counts from the day it was made. */
        post: operations["toolsCalibrate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trace-gaps": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a span that the records of a component do not cover. */
        post: operations["componentFactsAddGap"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trace-gaps/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a gap that is none. */
        post: operations["componentFactsVoidGap"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trial-balance": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** At every position: what the airframe flew, against what engines took, what passed empty and what did not run. */
        get: operations["trialBalanceGet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/trial-balance/airframes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same of one airframe, up to an instant, span by span: the one that does not add up is where to look. */
        get: operations["trialBalanceOfAirframe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/variations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records an approved variation of what is due now of a requirement on one subject: one time, within what is permitted. */
        post: operations["variationsAdd"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/variations/{id}/void": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Voids a variation that was recorded wrongly, or withdrawn. */
        post: operations["variationsVoid"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The process answers. */
        get: operations["healthLive"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health/ready": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The database answers too, and its migrations are applied. Refuses: UNAVAILABLE. */
        get: operations["healthReady"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        AcceptedByDto: {
            by: string;
            reference: string;
        };
        AcceptedLimitsDto: {
            changes: components["schemas"]["LimitChangeDto"][];
            limits: components["schemas"]["LifeLimitDto"][];
        };
        AcceptLimitsDto: {
            /**
             * @description A manual states limits; a directive lowers them.
             * @enum {string}
             */
            basis: "directive" | "manual";
            /** @description The digest of the preview that was seen. */
            digest: string;
            /** @description The manual, or the directive with its number. */
            document: string;
            /** @description From this day on the revision is effective. */
            effectiveOn: string;
            revision: string;
            rows: components["schemas"]["LimitRowDto"][];
        };
        AccomplishmentDto: {
            airframeId: string | null;
            at: string;
            code: string;
            componentId: string | null;
            /** @description The accomplishment that was voided for this one. */
            correctsId: string | null;
            cycles: components["schemas"]["CyclesDto"] | null;
            evidence: string;
            id: string;
            /** @description How it was complied with; null where nothing is said. */
            method: string | null;
            /** @description Minutes since new as the papers say; null: what the records here say at that instant. */
            minutes: number | null;
            /** @description The calendar day it counts from. */
            on: string;
            /** @description The package whose release met it; null when it was recorded by hand. */
            packageId: string | null;
            packageNumber: string | null;
            positionId: string | null;
            requirementId: string;
            /** @description What it was met on, in words. */
            subject: string;
            title: string;
            voided: boolean;
            voidReason: string | null;
        };
        AccountableItemDto: {
            key: string;
            /** @enum {string} */
            kind: "connection" | "cowl" | "panel" | "safety";
            name: string;
            /** @enum {string|null} */
            side: "left" | "right" | null;
        };
        AddedDto: {
            cycles: components["schemas"]["CyclesDto"] | null;
            /** @description Whole minutes; null when not known. */
            minutes: number | null;
        };
        AirframeBalanceDto: {
            airframeId: string;
            /** @description True when the difference of every span is zero. */
            balanced: boolean;
            positions: components["schemas"]["PositionBalanceDto"][];
            registration: string;
            upTo: string;
        };
        AirframeCountersDto: {
            /** @description The balance, then a line a calendar year. */
            addends: components["schemas"]["ClockAddendDto"][];
            id: string;
            moment: components["schemas"]["ToldMomentDto"] | null;
            positions: components["schemas"]["PositionCountersDto"][];
            registration: string;
            total: components["schemas"]["CountersDto"];
        };
        AirframeDto: {
            airframeTypeId: string;
            dayZone: string;
            /** @description Flights, the opening balance included; null while that is not known. */
            flights: number | null;
            id: string;
            lastLandingAt: string | null;
            lessor: string | null;
            manufacturedOn: string | null;
            /** @description Whole minutes in service, the opening balance included; null while that is not known. */
            minutes: number | null;
            owner: string;
            positions: components["schemas"]["AirframePositionDto"][];
            registration: string;
            ruleSet: string;
            serialNumber: string;
            /** @description Maker and designation of the type. */
            type: string;
            version: number;
        };
        AirframeFlownDto: {
            flights: number | null;
            minutes: number | null;
        };
        AirframePositionDto: {
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine";
            label: string;
            /** @enum {string} */
            mount: "left-wing" | "right-wing" | "tail";
            number: number;
            /** @description What it takes: an engine and a pod, or an auxiliary power unit. */
            slots: components["schemas"]["PositionSlotDto"][];
        };
        AirframeTypeDto: {
            designation: string;
            id: string;
            maker: string;
            positions: components["schemas"]["TypePositionDto"][];
            version: number;
        };
        AmendedOrderDto: {
            confirmedBy: string;
            /** @description What was read against the order before: voided, and to be entered anew. */
            entriesToRenew: components["schemas"]["EntryToRenewDto"][];
            orderId: string;
            packageId: string;
            /** @description The package's version after it. */
            version: number;
        };
        AmendOrderDto: {
            confirmation: components["schemas"]["ConfirmationDto"];
            /** @description The whole order as it shall be. Where the removal is done, what came off is left out. */
            order: components["schemas"]["NewOrderDto"];
            /** @description Why it is amended. */
            reason: string;
        };
        AmountsDto: {
            cycles: number | null;
            days: number | null;
            minutes: number | null;
            months: number | null;
        };
        AskedRateDto: {
            /** @description The days the amounts are of. */
            days: number;
            /** @description Flights in those days. */
            flights: number;
            /** @description How many days ahead. */
            horizonDays: number;
            /** @description Minutes in those days. */
            minutes: number;
        };
        AskedReadinessDto: {
            flights?: components["schemas"]["NewPlannedFlightDto"][];
            rate?: components["schemas"]["AskedRateDto"];
        };
        AssessmentDto: {
            airframeId: string | null;
            airframeTypeId: string | null;
            applicable: boolean;
            assessedBy: string;
            componentId: string | null;
            engineModelId: string | null;
            id: string;
            /** @description How it is to be complied with. */
            method: string | null;
            on: string;
            positionId: string | null;
            /** @description Why it does not apply, or what it applies by. */
            reason: string | null;
            reference: string;
            requirementId: string;
            /** @description The revision that was assessed. */
            revision: string;
            /** @description What it was assessed for, in words. */
            subject: string;
            voided: boolean;
            voidReason: string | null;
        };
        AssessmentStatusDto: {
            applicable: boolean;
            assessedBy: string;
            id: string;
            method: string | null;
            on: string;
            reason: string | null;
            reference: string;
        };
        AuthorisationDto: {
            /** @description Maker and designation of that type. */
            airframeType: string | null;
            /** @description Null: on all types of airframe. */
            airframeTypeId: string | null;
            fromOn: string;
            id: string;
            personId: string;
            personName: string;
            reference: string;
            /** @enum {string} */
            scope: "inspection" | "release" | "work";
            /**
             * @description How it stands today, in UTC. Within thirty days of its end it is told as ending soon.
             * @enum {string}
             */
            standing: "ended" | "ends-soon" | "in-force" | "to-come" | "voided";
            /** @description The last day it is good for; null while no end is set. */
            toOn: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        BalanceRowDto: {
            airframeId: string;
            /** @description Flown and run less all the rest; anything but zero was lost or made up. */
            difference: components["schemas"]["CountsDto"];
            /** @description What passed while no engine was there. */
            empty: components["schemas"]["CountsDto"];
            /** @description What the airframe flew. */
            flown: components["schemas"]["CountsDto"];
            /** @description What the engine there did not run. */
            notRunning: components["schemas"]["CountsDto"];
            /** @description What the engines there took. */
            onEngines: components["schemas"]["CountsDto"];
            positionId: string;
            positionNumber: number;
            registration: string;
            /** @description What was run there on the ground and counts. */
            runs: components["schemas"]["CountsDto"];
        };
        BalanceSpanDto: {
            /** @description Null: no engine was there. */
            componentId: string | null;
            /** @description Flown and run less all the rest; anything but zero was lost or made up in this span. */
            difference: components["schemas"]["CountsDto"];
            /** @description What the airframe flew then. */
            flown: components["schemas"]["CountsDto"];
            /** @description Null: since the airframe's first flight. */
            from: string | null;
            /** @description The last flight in it, to read on from; null when none is. */
            lastFlightId: string | null;
            /** @description What the engine there did not run. */
            notRunning: components["schemas"]["CountsDto"];
            /** @description What was run there on the ground then and counts. */
            runs: components["schemas"]["CountsDto"];
            serialNumber: string | null;
            /** @description What the engine there took, or what passed the empty position. */
            taken: components["schemas"]["CountsDto"];
            /** @description Null: it goes on. */
            to: string | null;
        };
        BlockerDto: {
            /** @enum {string} */
            code: "INSPECTION_MISSING" | "STEP_UNSIGNED";
            number: number;
            stepId: string;
            title: string;
        };
        BoardAirframeDto: {
            flights: number | null;
            id: string;
            lastFlightAt: string | null;
            /** @description Whole minutes in service; null while they are not known. */
            minutes: number | null;
            registration: string;
            /** @description Maker and designation of the type. */
            type: string;
        };
        BoardRowDto: {
            airframe: components["schemas"]["BoardAirframeDto"];
            positions: components["schemas"]["PositionCardDto"][];
        };
        BoundaryDto: {
            /**
             * Format: uuid
             * @description The airframe whose log or days are meant, where the place doesn't tell.
             */
            airframeId?: string;
            /** @description For an instant: 'YYYY-MM-DDTHH:MMZ', UTC. */
            at?: string;
            /**
             * @description How it is told.
             * @enum {string}
             */
            kind: "after-last" | "after-page" | "before-first" | "instant";
            /** @description For the first or last flight of a date: 'YYYY-MM-DD', in the zone of the airframe's rule set. */
            on?: string;
            /** @description For a log page: its number as written. */
            page?: string;
        };
        BuildDifferenceDto: {
            counters: components["schemas"]["CounterDifferenceDto"][];
            rating: components["schemas"]["RatingDifferenceDto"] | null;
            requirements: components["schemas"]["RequirementDifferenceDto"][];
            slots: components["schemas"]["SlotDifferenceDto"][];
            tightestCycles: components["schemas"]["TightestDifferenceDto"];
        };
        BuildStandardDto: {
            at: string;
            life: components["schemas"]["BuiltLifeDto"] | null;
            ratingCode: string | null;
            requirements: components["schemas"]["BuiltRequirementDto"][];
            sinceNew: components["schemas"]["CountersDto"];
            sinceOverhaul: components["schemas"]["CountersDto"] | null;
            sinceRepair: components["schemas"]["CountersDto"] | null;
            sinceShopVisit: components["schemas"]["CountersDto"] | null;
            slots: components["schemas"]["BuiltSlotDto"][];
        };
        BuiltComponentDto: {
            componentId: string;
            description: string;
            kind: string;
            life: components["schemas"]["BuiltLifeDto"] | null;
            lifeLimited: boolean;
            partNumber: string;
            serialNumber: string;
            sinceNew: components["schemas"]["CountersDto"];
        };
        BuiltLifeDto: {
            /** @enum {string} */
            kind: "limited" | "not-authorised" | "not-limited" | "unsubstantiated";
            reason: string | null;
            remainingCycles: number | null;
            remainingDays: number | null;
            remainingMinutes: number | null;
        };
        BuiltRequirementDto: {
            code: string;
            componentId: string | null;
            /** @enum {string|null} */
            governing: "cycles" | "days" | "minutes" | "months" | null;
            kind: string;
            lastDoneOn: string | null;
            remaining: number | null;
            requirementId: string;
            revision: string;
            status: string;
            subject: string;
            title: string;
        };
        BuiltSlotDto: {
            component: components["schemas"]["BuiltComponentDto"] | null;
            depth: number;
            name: string;
            parentId: string;
            parentSerial: string;
            slotId: string;
        };
        CalendarLifeDto: {
            /** @enum {string} */
            countedFrom: "first-installation" | "new" | "overhaul";
            /** @description The day it counts from. */
            countedOn: string | null;
            /** @enum {string} */
            monthRule: "month-end" | "same-day";
            span: number;
            /** @enum {string} */
            unit: "days" | "months";
        };
        CalibrationDto: {
            calibratedOn: string;
            certificate: string;
            dueOn: string;
            /** @description True for the one the tool's status goes by. */
            governs: boolean;
            id: string;
            voided: boolean;
            voidReason: string | null;
        };
        CarriedByDto: {
            id: string;
            serialNumber: string;
        };
        CarrierDto: {
            airframeId: string | null;
            id: string;
            kind: string;
            /** @description In words: the airframe and the position, the test cell, or the unit itself. */
            label: string;
            positionId: string | null;
            positionNumber: number | null;
        };
        CellBalanceDto: {
            difference: components["schemas"]["CountsDto"];
            name: string;
            /** @description What was run while no engine is recorded there. */
            notTaken: components["schemas"]["CountsDto"];
            /** @description What was run in it and counts. */
            ran: components["schemas"]["CountsDto"];
            /** @description What the engines in it took. */
            taken: components["schemas"]["CountsDto"];
            testCellId: string;
        };
        CertificateDto: {
            /** @description Its file is at /documents/{id}. */
            documentId: string;
            fileName: string;
            pages: number;
            /** @description Of its bytes, in hexadecimal. */
            sha256: string;
        };
        ChangedComponentDto: {
            description: string;
            id: string;
            partNumber: string;
            serialNumber: string;
            /** @description Since the installation that ends; null for what goes on. */
            sinceInstalled: components["schemas"]["CountersDto"] | null;
            sinceNew: components["schemas"]["CountersDto"];
        };
        ChangePasswordDto: {
            currentPassword: string;
            /** @description At least 15 characters. */
            newPassword: string;
        };
        ChangePositionDto: {
            id: string;
            label: string;
            number: number;
        };
        ChangePreviewDto: {
            /** @description The instant the boundary means. */
            at: string;
            /** @description Send it back to confirm exactly this. */
            digest: string;
            incoming: components["schemas"]["ChangedComponentDto"] | null;
            objections: components["schemas"]["ObjectionDto"][];
            outgoing: components["schemas"]["ChangedComponentDto"] | null;
            /**
             * @description How exactly it is known: minute, page or day.
             * @enum {string}
             */
            precision: "day" | "minute" | "page";
            /** @description The rating the incoming engine will run at; null when none is recorded. */
            ratingCode: string | null;
        };
        ChangeRequestDto: {
            /** Format: uuid */
            airframeId: string;
            boundary: components["schemas"]["BoundaryDto"];
            /** @description What the counter of an incoming auxiliary power unit showed; asked of no other. */
            incomingReading?: components["schemas"]["CounterFiguresDto"];
            /** @description The serial that goes on; left out when the place stays empty. */
            incomingSerial?: string | null;
            /** @description What the counter of an outgoing auxiliary power unit showed; asked of no other. */
            outgoingReading?: components["schemas"]["CounterFiguresDto"];
            /** @description The serial that comes off, as on the order; left out when the place is empty. */
            outgoingSerial?: string | null;
            /** @description The position's number; 0 is the auxiliary power unit. */
            positionNumber: number;
            /** @description The rating the incoming engine runs at from then on; left out, it keeps the one recorded. */
            ratingCode?: string;
            /** @description Why it was changed. */
            reason: string;
            /** @description The location the outgoing component goes to. */
            removedToLocation?: string;
            /**
             * @description What is changed there.
             * @enum {string}
             */
            slot: "apu" | "engine" | "pod";
        };
        CheckCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "check";
            label: string;
        };
        CheckTypedDto: {
            /** @enum {string} */
            kind: "check";
            seen: boolean;
        };
        ChoosePinDto: {
            /** @description One's own password: a PIN is chosen by nobody else. */
            password: string;
            /** @description Six to twelve digits. */
            pin: string;
        };
        ClockAddendDto: {
            counts: components["schemas"]["EventCountsDto"] | null;
            cycles: components["schemas"]["CyclesDto"] | null;
            /** @description What was at the position then; null for an airframe, and where nothing was. */
            engine: components["schemas"]["CarriedByDto"] | null;
            /** @description Null for the balance. */
            from: string | null;
            /** @enum {string} */
            kind: "flown" | "not-run" | "opening" | "run";
            minutes: number | null;
            note: string | null;
            running: components["schemas"]["CountersDto"];
            source: string | null;
            to: string | null;
            /** @enum {string|null} */
            trace: "not-shown" | "shown" | "stated" | null;
        };
        ComponentCountersDto: {
            sinceInstalled: components["schemas"]["CountersDto"] | null;
            sinceNew: components["schemas"]["CountersDto"];
            sinceOverhaul: components["schemas"]["CountersDto"] | null;
            sinceRepair: components["schemas"]["CountersDto"] | null;
            sinceShopVisit: components["schemas"]["CountersDto"] | null;
        };
        ComponentDto: {
            counters: components["schemas"]["ComponentCountersDto"];
            description: string;
            /** @description Maker and designation of the model. */
            engineModel: string | null;
            engineModelId: string | null;
            /** @description As recorded from its papers, where these records do not show it. */
            firstInstalledOn: string | null;
            gaps: components["schemas"]["GapDto"][];
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            lessor: string | null;
            life: components["schemas"]["LifeDto"] | null;
            lifeLimited: boolean;
            /** @description The tightest part in cycles; in hours where no cycles limit, else by date. */
            limiter: components["schemas"]["LimiterDto"] | null;
            /** @description The part whose life is projected to end first. */
            limiterByDate: components["schemas"]["LimiterDto"] | null;
            maker: string;
            manufacturedOn: string | null;
            owner: string;
            partNumber: string;
            place: components["schemas"]["PlaceDto"];
            /** @enum {string|null} */
            podClock: "airframe" | "position" | null;
            /** @description The rating an engine runs at. */
            ratingCode: string | null;
            serialNumber: string;
            slots: components["schemas"]["SlotDto"][];
            /** @description Whether everything its counters and its life rest on is known. */
            verified: boolean;
            version: number;
        };
        ComponentFactsDto: {
            gapAcceptances: components["schemas"]["GapAcceptanceDto"][];
            openings: components["schemas"]["OpeningDto"][];
            ratingChanges: components["schemas"]["RatingChangeDto"][];
            resets: components["schemas"]["ResetDto"][];
            traceGaps: components["schemas"]["TraceGapDto"][];
        };
        ComponentOffCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "component-off";
            label: string;
        };
        ComponentOffTypedDto: {
            /** @enum {string} */
            kind: "component-off";
            partNumber: string | null;
            /** @description Null for a place inside a component. */
            positionNumber: string | null;
            serialNumber: string;
        };
        ComponentOnCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "component-on";
            label: string;
        };
        ComponentOnTypedDto: {
            /** @enum {string} */
            kind: "component-on";
            partNumber: string | null;
            /** @description Null for a place inside a component. */
            positionNumber: string | null;
            serialNumber: string;
        };
        ComponentRowDto: {
            description: string;
            engineModelId: string | null;
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            lifeLimited: boolean;
            maker: string;
            partNumber: string;
            place: components["schemas"]["PlaceDto"];
            serialNumber: string;
        };
        ComponentsPageDto: {
            /** @description What to send as `after` for the next page; null on the last. */
            next: string | null;
            rows: components["schemas"]["ComponentRowDto"][];
        };
        ConfirmationDto: {
            /** @enum {string} */
            method: "password" | "pin";
            /** @description That person's own password or PIN. */
            secret: string;
            signInName: string;
        };
        ConfirmedChangeDto: {
            /** Format: uuid */
            airframeId: string;
            boundary: components["schemas"]["BoundaryDto"];
            /** @description The digest of the preview that was confirmed. */
            confirmDigest: string;
            /** @description What the counter of an incoming auxiliary power unit showed; asked of no other. */
            incomingReading?: components["schemas"]["CounterFiguresDto"];
            /** @description The serial that goes on; left out when the place stays empty. */
            incomingSerial?: string | null;
            /** @description What the counter of an outgoing auxiliary power unit showed; asked of no other. */
            outgoingReading?: components["schemas"]["CounterFiguresDto"];
            /** @description The serial that comes off, as on the order; left out when the place is empty. */
            outgoingSerial?: string | null;
            /** @description The position's number; 0 is the auxiliary power unit. */
            positionNumber: number;
            /** @description The rating the incoming engine runs at from then on; left out, it keeps the one recorded. */
            ratingCode?: string;
            /** @description Why it was changed. */
            reason: string;
            /** @description The location the outgoing component goes to. */
            removedToLocation?: string;
            /**
             * @description What is changed there.
             * @enum {string}
             */
            slot: "apu" | "engine" | "pod";
        };
        ConsequencesDto: {
            /** @description Limits and requirements that are reached or passed now and were not before. */
            newlyOver: components["schemas"]["NewlyOverDto"][];
            newlyUnknown: components["schemas"]["NewlyUnknownDto"][];
            /** @description Spans flown over a limit that show by it, or are longer by it; also of what was removed or done since. */
            overruns: components["schemas"]["OverrunDto"][];
        };
        CorrectedAccomplishmentDto: {
            /** @description When it was met. Old papers name a day alone: give `on` then. */
            at?: string | null;
            /** @description What cycles are counted in; 1 unless told. */
            cycleDenominator?: number;
            /** @description Cycles since new as the papers say, in units of 1 / cycleDenominator. */
            cycles?: number | null;
            /** @description The papers that prove it. */
            evidence: string;
            /** @description How it was complied with, where there is a choice. */
            method?: string | null;
            /** @description Minutes since new as the papers say; left out, what the records here say at that instant. */
            minutes?: number | null;
            /** @description The day it was met, where the minute is not known; counters not given are read at its beginning. */
            on?: string | null;
            reason: string;
        };
        CorrectFlightDto: {
            flight: components["schemas"]["NewFlightDto"];
            reason: string;
        };
        CorrectReadingDto: {
            minutes: number;
            /** @description Why the other one was wrong. */
            reason: string;
            starts: number;
        };
        CountAccountDto: {
            in: number | null;
            out: number | null;
            /** @enum {string} */
            what: "blanks" | "tags" | "tools";
        };
        CountCaptureDto: {
            /** @enum {string} */
            direction: "in" | "out";
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "count";
            label: string;
            /** @enum {string} */
            what: "blanks" | "tags" | "tools";
        };
        CounterAddendDto: {
            acceptedBy: string | null;
            /** @description What carried it over this span: the engine or pod it hung in, or itself. */
            carriedBy: components["schemas"]["CarriedByDto"] | null;
            carrier: components["schemas"]["CarrierDto"] | null;
            /** @description Raw events counted by the clock in this span, exceptions taken off and runs added. */
            counts: components["schemas"]["EventCountsDto"] | null;
            cycles: components["schemas"]["CyclesDto"] | null;
            exceptions: components["schemas"]["ExceptionWithinDto"][];
            from: string | null;
            /** @description The opening balance or the gap. */
            id: string | null;
            /**
             * @description A balance, what it ran by one clock, a gap at its accepted worst case, or something nobody knows.
             * @enum {string}
             */
            kind: "exposure" | "gap" | "opening" | "unknown";
            minutes: number | null;
            /** @description When a balance holds, as it was told. */
            moment: components["schemas"]["ToldMomentDto"] | null;
            /** @description What is missing, or why nothing is known. */
            note: string | null;
            ratingCode: string | null;
            rule: components["schemas"]["CycleRuleBehindDto"] | null;
            /** @description The sum after this line. */
            running: components["schemas"]["CountersDto"];
            /** @description The document of a balance, or the reference of an acceptance. */
            source: string | null;
            /** @description Null where it runs still, as of now. */
            to: string | null;
            /** @enum {string|null} */
            trace: "not-shown" | "shown" | "stated" | null;
        };
        CounterAnswerDto: {
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            /** @description What it has counted from its first reading on. */
            counted: components["schemas"]["CounterFiguresDto"];
            /** @description When it was last read; null where it never was. */
            readAt: string | null;
            readings: components["schemas"]["CounterReadingDto"][];
            serialNumber: string;
        };
        CounterBalanceDto: {
            componentId: string;
            difference: components["schemas"]["CountsDto"];
            /** @description What it counted before the unit's opening balance, which holds it already. */
            notTaken: components["schemas"]["CountsDto"];
            /** @description What the counter counted, from reading to reading. */
            ran: components["schemas"]["CountsDto"];
            serialNumber: string;
            /** @description What the unit took. */
            taken: components["schemas"]["CountsDto"];
        };
        CounterDifferenceDto: {
            after: components["schemas"]["CountersDto"] | null;
            before: components["schemas"]["CountersDto"] | null;
            /** @enum {string} */
            counter: "sinceNew" | "sinceOverhaul" | "sinceRepair" | "sinceShopVisit";
        };
        CounterFiguresDto: {
            /** @description Whole minutes of running. */
            minutes: number;
            starts: number;
        };
        CounterReadingDto: {
            at: string;
            /** @description Where the new counter begins, when it was replaced. */
            first: components["schemas"]["CounterFiguresDto"] | null;
            id: string;
            /**
             * @description As it went on, as it came off, in between, or as the counter was replaced.
             * @enum {string}
             */
            kind: "installed" | "read" | "removed" | "replaced";
            minutes: number;
            /** @description What the counter had run since the reading before; null for the first one. */
            ran: components["schemas"]["CounterFiguresDto"] | null;
            source: string | null;
            starts: number;
            voided: boolean;
            voidReason: string | null;
        };
        CounterReadingsDto: {
            componentId: string;
            /** @description What it has counted from its first reading on. */
            counted: components["schemas"]["CounterFiguresDto"];
            /** @description When it was last read; null where it never was. */
            readAt: string | null;
            readings: components["schemas"]["CounterReadingDto"][];
            serialNumber: string;
        };
        CounterResetDto: {
            /** @description The document that shows it; for an installation the place. */
            evidence: string;
            id: string;
            /** @enum {string} */
            kind: "installation" | "opening" | "overhaul" | "repair" | "shop-visit";
            moment: components["schemas"]["ToldMomentDto"];
        };
        CountersDto: {
            /** @description Cycles, exact. */
            cycles: components["schemas"]["CyclesDto"] | null;
            /** @description Whole minutes. */
            minutes: number | null;
        };
        CountsDto: {
            abortedTakeOffs: number;
            flights: number;
            landings: number;
            minutes: number;
            starts: number;
            touchAndGoes: number;
        };
        CountTypedDto: {
            /** @enum {string} */
            kind: "count";
            number: string;
        };
        CycleRuleBehindDto: {
            denominator: number;
            perAbortedTakeOff: number;
            perFlight: number;
            perLanding: number;
            perStart: number;
            perTouchAndGo: number;
            revision: string | null;
            source: string | null;
        };
        CycleRuleDto: {
            airframeTypeId: string | null;
            denominator: number;
            /** @description From this day on, 00:00 UTC; null: always. */
            effectiveOn: string | null;
            id: string;
            perAbortedTakeOff: number;
            perFlight: number;
            perLanding: number;
            perStart: number;
            perTouchAndGo: number;
            revision: string;
            source: string;
        };
        CyclesDto: {
            /** @description How many units make a cycle. */
            denominator: number;
            /** @description Whole units. */
            units: number;
        };
        DimensionStatusDto: {
            /** @description Days until nothing is left at the average use of the last 90 days, rounded down; null when nothing is used. */
            days: number | null;
            /** @description The same with one decimal, rounded down. */
            daysText: string | null;
            /** @enum {string} */
            dimension: "cycles" | "days" | "minutes" | "months";
            /** @description Counter since new at which it is due, in whole minutes or cycles; null for days and months. */
            dueAt: number | null;
            /** @description The last day it is good through; null for minutes and cycles. */
            dueOn: string | null;
            /** @description From here on it may be met without planned times shifting: minutes or cycles since new; null for days and months. */
            earliestAt: number | null;
            earliestOn: string | null;
            /** @description Whether it is the one that governs. */
            governs: boolean;
            /** @description What is granted: minutes, cycles, days or months. */
            interval: number;
            /** @description Whether it is of an outer bound, which governs as soon as it comes. */
            isBound: boolean;
            /** @description The end of what is granted past it, by its window or an approved variation; the due itself where nothing is. */
            latestAt: number | null;
            latestOn: string | null;
            /** @description Whole minutes, cycles or days left; below zero it is past. */
            remaining: number;
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
            /** @description The farthest that a variation may be approved for; the due itself where none may. */
            variableAt: number | null;
            variableOn: string | null;
        };
        DispositionDto: {
            /** @enum {string} */
            method: "mutilated" | "other" | "permanent-mark" | "record" | "segregated" | "tag" | "temporary-mark";
            /** @description The number of the tag, the place, the mark. */
            text: string;
        };
        DocumentBegunDto: {
            jobId: string;
        };
        DocumentDto: {
            /** @description Who had it prepared. */
            by: string;
            createdAt: string;
            fileName: string;
            id: string;
            kind: string;
            pages: number;
            /** @description Of its bytes, in hexadecimal. */
            sha256: string;
            subjectId: string;
        };
        DueBasisDto: {
            /** @description Days that an average is of; null for what is planned. */
            days: number | null;
            /** @enum {string} */
            kind: "average" | "flights" | "rate";
            /** @description The basis in words. */
            statement: string;
            /** @description Its numbers, for each airframe of the page. */
            uses: components["schemas"]["DueUseDto"][];
        };
        DueCountsDto: {
            inTolerance: number;
            later: number;
            notVerified: number;
            over: number;
            planned: number;
            soon: number;
            total: number;
        };
        DueDimensionDto: {
            /** @enum {string} */
            dimension: "cycles" | "days" | "minutes" | "months";
            /** @description The last day it is good through; null for minutes and cycles. */
            dueOn: string | null;
            /** @description What is granted: minutes, cycles, days or months; null where no document says. */
            interval: number | null;
            /** @description Whether it is of an outer bound, which governs as soon as it comes. */
            isBound: boolean;
            /** @description The day on which nothing is left by the basis; a forecast in minutes and cycles, never a limit. */
            projectedOn: string | null;
            /** @description Whole minutes, cycles or days left; below zero they are past. */
            remaining: number;
            /** @description The same until the end of what the requirement grants past it: its window, or an approved variation. */
            untilLatest: number;
        };
        DuePageDto: {
            basis: components["schemas"]["DueBasisDto"];
            /** @description Send it as `after` for the next page; null after the last. */
            next: string | null;
            rows: components["schemas"]["DueRowDto"][];
        };
        DueRequirementDto: {
            code: string;
            /**
             * @description Whether the dimension that comes first governs, or the one that comes last.
             * @enum {string}
             */
            combine: "first" | "last";
            id: string;
            /** @enum {string} */
            kind: "airworthiness-limitation" | "bulletin" | "check" | "directive" | "discard" | "inspection" | "overhaul";
            title: string;
        };
        DueRowDto: {
            /** @description The registration; null for what is on no airframe. */
            airframe: string | null;
            airframeId: string | null;
            /** @description What the projection rests on, or why there is none. */
            basis: string;
            /** @description Null for a requirement of an airframe or a position, as are its description and numbers. */
            componentId: string | null;
            description: string | null;
            /**
             * @description What governs: cycles, minutes or the calendar, or none where nothing can be told.
             * @enum {string}
             */
            dimension: "cycles" | "days" | "minutes" | "months" | "none";
            /** @description Document the limit or requirement is from. */
            document: string | null;
            /** @description The last day it is good through; null where hours or cycles govern. */
            dueOn: string | null;
            /** @description All its dimensions that can be told. */
            dues: components["schemas"]["DueDimensionDto"][];
            engineId: string | null;
            engineSerial: string | null;
            /** @description A worst case stands for what is unknown, under a recorded acceptance. */
            flagged: boolean;
            id: string;
            /** @enum {string} */
            kind: "counters" | "life-limit" | "requirement";
            /** @description The limit, or what the requirement grants: in whole cycles or minutes, days or months. */
            limit: number | null;
            partNumber: string | null;
            positionNumber: number | null;
            /** @description The day on which nothing is left at the use named by `basis`; a forecast, never a limit. */
            projectedOn: string | null;
            /** @description Why it is not verified or not authorised. */
            reason: string | null;
            /** @description Whole cycles left, rounded down; below zero they are past. */
            remainingCycles: number | null;
            /** @description Days left; a calendar limit is good through its day. */
            remainingDays: number | null;
            /** @description Whole minutes left. */
            remainingMinutes: number | null;
            /** @description The requirement it is of; null for a limit. */
            requirement: components["schemas"]["DueRequirementDto"] | null;
            revision: string | null;
            serialNumber: string | null;
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
        };
        DueTotalsDto: {
            /** @description Of the airframe, position or component asked for; of the whole fleet where none is. */
            scope: components["schemas"]["DueCountsDto"];
            /** @description Of what the filters show. */
            shown: components["schemas"]["DueCountsDto"];
            /** @description Of the whole fleet. */
            whole: components["schemas"]["DueCountsDto"];
        };
        DueUseDto: {
            airframeId: string;
            days: number;
            flights: number;
            /** @description Whole minutes in those days. */
            minutes: number;
            registration: string;
        };
        EndAuthorisationDto: {
            /** @description The last day it is good for. */
            lastOn: string;
            reason: string;
        };
        EngineModelDto: {
            cycleRules: components["schemas"]["CycleRuleDto"][];
            designation: string;
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine";
            /** @enum {string} */
            lifeMethod: "lowest-limit" | "pro-rata";
            lifeSource: string;
            maker: string;
            ratings: components["schemas"]["RatingDto"][];
            version: number;
        };
        EntryReasonDto: {
            /** @enum {string} */
            code: "ABOVE_RANGE" | "BELOW_RANGE" | "DURATION_MISSING" | "DURATION_SHORT" | "EMPTY" | "LEAK_FOUND" | "NOT_A_NUMBER" | "NOT_IN_REGISTER" | "NOT_SEEN" | "NO_EFFECTIVE_LENGTH" | "NO_SUCH_POINT" | "OUTSIDE_WINDOW" | "OUT_OF_ORDER" | "PAPERS_DIFFER" | "PAPERS_MISSING" | "PART_NUMBER_DIFFERS" | "POSITION_DIFFERS" | "POWER_DIFFERS" | "POWER_MISSING" | "READING_MISSING" | "RUN_ON_ABOVE" | "RUN_ON_BELOW" | "RUN_ON_MISSING" | "SERIAL_DIFFERS" | "TAGGED_UNSERVICEABLE" | "TOOL_MISSING" | "TOOL_NOT_CALIBRATED" | "TOOL_OUT_OF_DATE" | "TOOL_OUT_OF_RANGE" | "TOOL_RANGE_UNKNOWN";
            /** @description The values its sentence needs. */
            detail: {
                [key: string]: (string | number) | null;
            };
        };
        EntryToRenewDto: {
            entryId: string;
            stepId: string;
        };
        EventCountsDto: {
            abortedTakeOffs: number;
            flights: number;
            landings: number;
            minutes: number;
            starts: number;
            touchAndGoes: number;
        };
        EventStatusDto: {
            /** @description The day on which it happened and it was not met: it is over. Null: it did not happen yet. */
            happenedOn: string | null;
            /** @enum {string} */
            kind: "installation" | "main-base-return" | "removal" | "shop-visit";
        };
        ExceptionWithinDto: {
            flightId: string;
            kind: string;
            landingAt: string;
            logPage: string;
            /** @description What it did not count. */
            missed: components["schemas"]["EventCountsDto"];
        };
        ExplainedCounterDto: {
            addends: components["schemas"]["CounterAddendDto"][];
            /** @enum {string} */
            basis: "installation" | "new" | "overhaul" | "repair" | "shop-visit";
            reset: components["schemas"]["CounterResetDto"] | null;
            total: components["schemas"]["CountersDto"];
        };
        ExplainedCountersDto: {
            counters: components["schemas"]["ExplainedCounterDto"][];
            description: string;
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            /** @description The moment asked for; null: now. */
            moment: components["schemas"]["ToldMomentDto"] | null;
            partNumber: string;
            serialNumber: string;
        };
        ExtensionTypedDto: {
            angle: string;
            length: string;
            wrenchLength: string;
        };
        FieldProblemDto: {
            /** @description The field's path in the request, with dots and indexes. */
            field: string;
            /** @description What to enter instead. */
            fix: string;
            /** @description Why it was refused. */
            reason: string;
        };
        FlightAtEndDto: {
            airframeId: string;
            id: string;
            landingAt: string;
            logPage: string;
            registration: string;
            takeOffAt: string;
        };
        FlightDto: {
            abortedTakeOffs: number;
            airframeId: string;
            entryRow: number | null;
            exceptions: components["schemas"]["FlightExceptionDto"][];
            fromStation: string;
            id: string;
            landingAt: string;
            logPage: string;
            /** @description Whole minutes in service. */
            minutes: number;
            /** @description The flight it corrects. */
            replacesId: string | null;
            /** @description How it came in: 'entered', or 'import' with the line of its file. */
            source: string;
            starts: number;
            takeOffAt: string;
            toStation: string;
            touchAndGoes: number;
            voided: boolean;
            voidReason: string | null;
        };
        FlightExceptionDto: {
            abortedTakeOffs: number;
            flights: number;
            /** @enum {string} */
            kind: "not-running" | "shut-down";
            landings: number;
            minutes: number;
            positionNumber: number;
            starts: number;
            touchAndGoes: number;
        };
        FlightGapDto: {
            after: string;
            before: string;
            /** @enum {string} */
            kind: "pages" | "stations";
            /** @description The note that explains it; without one it blocks a release. */
            noteId: string | null;
        };
        FlightOfLineDto: {
            /** @description What it counted: the flight less what its position did not run. */
            counts: components["schemas"]["EventCountsDto"];
            fromStation: string;
            id: string;
            landingAt: string;
            logPage: string;
            takeOffAt: string;
            toStation: string;
        };
        FlightsAnswerDto: {
            airframe: components["schemas"]["AirframeFlownDto"];
            flights: components["schemas"]["FlightDto"][];
            /** @description Whether one of them lies before a change recorded already, so that counters of the past moved. */
            late: boolean;
            /** @description Limits and requirements that are reached or passed now and were not before. */
            newlyOver: components["schemas"]["NewlyOverDto"][];
            newlyUnknown: components["schemas"]["NewlyUnknownDto"][];
            /** @description Spans flown over a limit that show by it, or are longer by it; also of what was removed or done since. */
            overruns: components["schemas"]["OverrunDto"][];
        };
        FlightsOfLinePageDto: {
            next: string | null;
            rows: components["schemas"]["FlightOfLineDto"][];
        };
        FlightsPageDto: {
            /** @description What to send as `after` for the next page; null on the last. */
            next: string | null;
            rows: components["schemas"]["LoggedFlightDto"][];
        };
        FlightsPlannedDto: {
            airframeId: string;
            /** @description How many were planned. */
            planned: number;
            /** @description How many that were planned before they replaced. */
            replaced: number;
        };
        GapAcceptanceDto: {
            acceptedBy: string;
            componentId: string;
            cycles: number | null;
            id: string;
            minutes: number | null;
            openingId: string | null;
            reference: string;
            traceGapId: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        GapDto: {
            accepted: boolean;
            from: string;
            id: string;
            note: string;
            to: string;
        };
        GapNoteDto: {
            /** @description The page, or the station of departure, of the flight after. */
            after: string;
            /** @description The page, or the station of arrival, of the flight before. */
            before: string;
            /** @description The flight after the gap. */
            flightId: string;
            id: string;
            /** @enum {string} */
            kind: "pages" | "stations";
            note: string;
            voided: boolean;
            voidReason: string | null;
        };
        GivenSignatureDto: {
            /** @description Hash of the step's content that was signed. */
            contentHash: string;
            /** @description For an inspection: the signature of the work it covers. */
            coversId: string | null;
            id: string;
            licence: string | null;
            /** @enum {string} */
            meaning: "done" | "inspection";
            /** @enum {string} */
            method: "password" | "pin";
            moved: components["schemas"]["MovedByStepDto"][];
            /** @description What is held against what was fitted, without forbidding it. */
            objections: components["schemas"]["ObjectionDto"][];
            packageId: string;
            performedAt: string;
            person: string;
            personId: string;
            reinspectionReason: string | null;
            /** @description SHA-256 of what was signed: words, signer, moment and content. */
            signatureHash: string;
            signedAt: string;
            statement: string;
            stepId: string;
            /** @description The step's version after it. */
            version: number;
        };
        GrantedDto: {
            cycles: number | null;
            days: number | null;
            /**
             * @description Due when this happens next; null: at no event.
             * @enum {string|null}
             */
            event: "installation" | "main-base-return" | "removal" | "shop-visit" | null;
            minutes: number | null;
            months: number | null;
            /** @description Governs as soon as it comes, from the same point. */
            notToExceed: components["schemas"]["AmountsDto"] | null;
        };
        GrantedTierDto: {
            atMost: number | null;
            atMostDays: number | null;
            percent: number | null;
            upTo: number | null;
        };
        GrantedTiersDto: {
            cycles: components["schemas"]["GrantedTierDto"][];
            days: components["schemas"]["GrantedTierDto"][];
            minutes: components["schemas"]["GrantedTierDto"][];
            months: components["schemas"]["GrantedTierDto"][];
        };
        GrantedWindowDto: {
            early: components["schemas"]["GrantedTiersDto"];
            late: components["schemas"]["GrantedTiersDto"];
        };
        GrantsDto: {
            cycles?: components["schemas"]["TierDto"][];
            days?: components["schemas"]["TierDto"][];
            minutes?: components["schemas"]["TierDto"][];
            months?: components["schemas"]["TierDto"][];
        };
        GroundRunAnswerDto: {
            consequences: components["schemas"]["ConsequencesDto"];
            /** @description Whether it lies before a change recorded already, so that counters of the past moved. */
            late: boolean;
            run: components["schemas"]["GroundRunDto"];
        };
        GroundRunDto: {
            abortedTakeOffs: number;
            /** @description Null in a test cell. */
            airframeId: string | null;
            /** @description Of them, what counts as time in service. */
            countedMinutes: number;
            endedAt: string;
            /** @description Null where a later record says that none was there. */
            engine: components["schemas"]["RunEngineDto"] | null;
            id: string;
            positionNumber: number | null;
            purpose: string;
            /** @description Whole minutes it ran. */
            runMinutes: number;
            source: string;
            startedAt: string;
            starts: number;
            /** @description Null at a position. */
            testCellId: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        GroundRunsPageDto: {
            /** @description What to send as `after` for the next page; null on the last. */
            next: string | null;
            rows: components["schemas"]["GroundRunDto"][];
        };
        HealthDto: {
            /** @enum {string} */
            status: "live" | "ready";
        };
        HistoryDto: {
            lines: components["schemas"]["HistoryLineDto"][];
            subject: components["schemas"]["HistorySubjectDto"];
            totals: components["schemas"]["HistoryTotalsDto"];
        };
        HistoryLineDto: {
            adds: components["schemas"]["AddedDto"] | null;
            at: string;
            detail: string;
            entry: components["schemas"]["LineEntryDto"];
            /** @description How the moment is known where no minute was recorded. */
            placed: string | null;
            struck: components["schemas"]["StruckDto"] | null;
            title: string;
            totals: components["schemas"]["LineTotalsDto"];
            /** @description Null for what is in no package; not printed. */
            work: components["schemas"]["LineWorkDto"] | null;
        };
        HistorySubjectDto: {
            id: string;
            identity: components["schemas"]["IdentityDto"][];
            /** @enum {string} */
            kind: "airframe" | "component";
            label: string;
        };
        HistoryTotalsDto: {
            cycles: number | null;
            lines: number;
            minutes: number | null;
        };
        IdentityDto: {
            name: string;
            value: string;
        };
        ImportBegunDto: {
            id: string;
            jobId: string;
            /** @enum {string} */
            state: "applied" | "applying" | "cancelled" | "checked" | "checking";
            version: number;
        };
        ImportDto: {
            already: number;
            createdAt: string;
            createdBy: string;
            effect: components["schemas"]["ImportEffectDto"][];
            /** @description The first errors, by line; all that are kept are in errors.csv. */
            errors: components["schemas"]["ImportErrorDto"][];
            /** @description Errors kept beyond those shown here. */
            errorsLeftOut: number;
            failed: number;
            fileName: string;
            id: string;
            job: components["schemas"]["ImportJobDto"] | null;
            /** @enum {string} */
            kind: "flights";
            newlyOver: components["schemas"]["NewlyOverDto"][];
            newlyUnknown: components["schemas"]["NewlyUnknownDto"][];
            /** @description Spans flown over a limit that show by these flights. */
            overruns: components["schemas"]["OverrunDto"][];
            ready: number;
            /** @description The root over the rows as recorded, hexadecimal; it stands in the journal. */
            root: string | null;
            rows: number;
            /** @description The import that applied this very file before. */
            sameAs: components["schemas"]["SameFileDto"] | null;
            /** @description SHA-256 of the file, hexadecimal. */
            sha256: string;
            /** @enum {string} */
            state: "applied" | "applying" | "cancelled" | "checked" | "checking";
            version: number;
        };
        ImportEffectDto: {
            airframeId: string;
            flights: number;
            minutes: number;
            registration: string;
        };
        ImportErrorDto: {
            /** @description The column's heading; null where the whole line is meant. */
            column: string | null;
            fix: string;
            /** @description The file's own line. */
            line: number;
            reason: string;
            value: string;
        };
        ImportJobDto: {
            done: number;
            failure: string | null;
            id: string;
            /** @enum {string} */
            state: "cancelled" | "done" | "failed" | "queued" | "running";
            total: number | null;
        };
        ImportRowDto: {
            /** @description Rows that say what is on record already. */
            already: number;
            createdAt: string;
            createdBy: string;
            /** @description Lines that err. */
            failed: number;
            fileName: string;
            id: string;
            /** @enum {string} */
            kind: "flights";
            /** @description Rows that can be applied, or were. */
            ready: number;
            /** @description Lines with something on them, without the heading. */
            rows: number;
            /** @enum {string} */
            state: "applied" | "applying" | "cancelled" | "checked" | "checking";
        };
        ImportsPageDto: {
            /** @description What to send as `after` for the next page; null on the last. */
            next: string | null;
            rows: components["schemas"]["ImportRowDto"][];
        };
        InstalledEngineDto: {
            id: string;
            installedAt: string;
            /** @description Maker and designation of its model. */
            model: string | null;
            partNumber: string;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            ratingCode: string | null;
            serialNumber: string;
            sinceInstalled: components["schemas"]["CountersDto"];
            sinceNew: components["schemas"]["CountersDto"];
            /** @description Null where nothing can be projected, as for a clock that did not run. */
            soonest: components["schemas"]["SoonestPartDto"] | null;
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
            tightest: components["schemas"]["TightestPartDto"] | null;
        };
        InstalledPodDto: {
            id: string;
            installedAt: string;
            serialNumber: string;
        };
        IntervalDto: {
            cycles?: number | null;
            days?: number | null;
            /** @description Whole minutes in service. */
            minutes?: number | null;
            /** @description Calendar months. */
            months?: number | null;
        };
        JobDto: {
            done: number;
            /** @description Why it failed. */
            failure: string | null;
            id: string;
            kind: string;
            result: components["schemas"]["JobResultDto"] | null;
            /** @enum {string} */
            state: "cancelled" | "done" | "failed" | "queued" | "running";
            subjectId: string | null;
            /** @description How much there is to do; null while that is not known. */
            total: number | null;
        };
        JobResultDto: {
            /** @description The document it prepared, where that is what it does. */
            documentId?: string;
        };
        JournalEntryDto: {
            /** @description The canonical text that was hashed. */
            body: string;
            /** @description Who acted; null for the system. */
            by: string | null;
            /** @description Its own hash. */
            hash: string;
            kind: string;
            number: number;
            /** @description The hash of the entry before in its chain, in hexadecimal. */
            prev: string;
            recordedAt: string;
            /** @description Its place in the chain, from 1. */
            seq: number;
            /** @description The chain it is in. */
            stream: string;
        };
        JournalPageDto: {
            next: string | null;
            rows: components["schemas"]["JournalEntryDto"][];
        };
        JudgementDto: {
            /** @description Figures computed, as text with their units. */
            computed: {
                [key: string]: string | null;
            };
            reasons: components["schemas"]["EntryReasonDto"][];
            /** @enum {string} */
            verdict: "accepted" | "rejected";
        };
        LastDoneDto: {
            cycles: components["schemas"]["CyclesDto"] | null;
            evidence: string;
            id: string;
            method: string | null;
            /** @description Counters since new as its papers say; null: as flown here. */
            minutes: number | null;
            on: string;
        };
        LeakCheckCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "leak-check";
            label: string;
            /** @description The shortest time, in whole minutes. */
            minMinutes: number;
            /** @description The power the data asks for. */
            power: string;
        };
        LeakCheckTypedDto: {
            /** @enum {string} */
            found: "leak" | "none";
            /** @enum {string} */
            kind: "leak-check";
            minutes: string;
            power: string;
        };
        LifeDto: {
            /** @description Who accepted the worst case, by which reference. */
            acceptedBy: components["schemas"]["AcceptedByDto"][];
            /** @description What the projection rests on, or why there is none. */
            basis: string;
            /** @description The calendar life that ends first. */
            calendar: components["schemas"]["CalendarLifeDto"] | null;
            cycleLimit: number | null;
            cyclesUsed: components["schemas"]["CyclesDto"] | null;
            /** @description The document that governs. */
            document: string | null;
            /** @description The worst case stands for something unknown, under a recorded acceptance. */
            flagged: boolean;
            /** @description The last day it is good through. */
            goodThrough: string | null;
            /** @enum {string} */
            kind: "limited" | "not-authorised" | "not-limited" | "unsubstantiated";
            minuteLimit: number | null;
            minutesUsed: number | null;
            /** @enum {string|null} */
            projectedBy: "cycles" | "days" | "minutes" | null;
            /** @description The day on which nothing is left; a forecast where use drives it, never a limit. */
            projectedOn: string | null;
            ratingCode: string | null;
            reasons: components["schemas"]["LifeReasonDto"][];
            /** @description Whole cycles left, rounded down; 0 is the last, below 0 is an overrun. */
            remainingCycles: number | null;
            /** @description Days until then: 0 on the last day, below 0 past it. */
            remainingDays: number | null;
            remainingMinutes: number | null;
            revision: string | null;
            /** @description The manual, and each directive that lowers its limit. */
            sources: components["schemas"]["LifeSourceDto"][];
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
            /** @description The share of the life that is used, exact; 1 is all of it. */
            used: components["schemas"]["CyclesDto"] | null;
        };
        LifeLimitDto: {
            /** @enum {string} */
            authorisation: "limited" | "not-authorised" | "not-limited";
            /**
             * @description A manual states limits; a directive lowers them.
             * @enum {string}
             */
            basis: "directive" | "manual";
            /** @enum {string|null} */
            calendarFrom: "first-installation" | "new" | "overhaul" | null;
            /** @description A calendar life: so many days or months, flown or stored. */
            calendarSpan: number | null;
            /** @enum {string|null} */
            calendarUnit: "days" | "months" | null;
            cycles: number | null;
            document: string;
            effectiveOn: string;
            /** @description Maker and designation of the model. */
            engineModel: string;
            engineModelId: string;
            id: string;
            minutes: number | null;
            /** @enum {string|null} */
            monthRule: "month-end" | "same-day" | null;
            partNumber: string;
            ratingCode: string | null;
            revision: string;
            /**
             * @description Whether it governs now, will from its day on, or does not: for a newer revision, or another's lower limit. Null of
             *     one that is voided.
             * @enum {string|null}
             */
            standing: "in-force" | "later" | "not-governing" | null;
            voided: boolean;
            voidReason: string | null;
        };
        LifeReasonDto: {
            code: string;
            text: string;
        };
        LifeSheetDto: {
            /** @description As at. */
            at: string;
            /** @description What the sheet is, and what it is not. */
            cautions: string[];
            /** @description What limits first, in words. */
            limiterByCycles: string | null;
            limiterByDate: string | null;
            operator: string;
            parts: components["schemas"]["SheetPartDto"][];
            /** @description The rule set of the airframe it is on; null when it is on none. */
            ruleSet: string | null;
            subject: components["schemas"]["SheetSubjectDto"];
            title: string;
            /** @description What is filled in by hand: the system signs nothing. */
            toSign: string[];
        };
        LifeSourceDto: {
            /** @enum {string} */
            basis: "directive" | "manual";
            document: string;
            effectiveOn: string;
            /** @description In what it governs; nothing where another document's is lower. */
            governs: ("authorisation" | "cycles" | "days" | "minutes")[];
            revision: string;
        };
        LimitChangeDto: {
            after: components["schemas"]["LimitSideDto"];
            airframe: string | null;
            before: components["schemas"]["LimitSideDto"];
            componentId: string;
            cyclesUsed: components["schemas"]["CyclesDto"] | null;
            description: string;
            /**
             * @description What it does: puts it over, forbids it, brings it within the alert window, leaves it less or more, makes it not
             *     verified or tells it, or changes the document alone.
             * @enum {string}
             */
            effect: "document" | "less" | "more" | "not-authorised" | "not-verified" | "over" | "short";
            engineId: string | null;
            engineSerial: string | null;
            minutesUsed: number | null;
            partNumber: string;
            positionNumber: number | null;
            ratingCode: string | null;
            serialNumber: string;
        };
        LimiterDto: {
            basis: string;
            componentId: string;
            description: string;
            /** @description The worst case stands for something unknown, under a recorded acceptance. */
            flagged: boolean;
            goodThrough: string | null;
            partNumber: string;
            /** @enum {string|null} */
            projectedBy: "cycles" | "days" | "minutes" | null;
            projectedOn: string | null;
            /** @description Why nothing remains to be told; null when a number stands. */
            reason: string | null;
            remainingCycles: number | null;
            remainingDays: number | null;
            remainingMinutes: number | null;
            serialNumber: string;
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
        };
        LimitPreviewDto: {
            /** @description What it puts over, forbids or makes short first. */
            changes: components["schemas"]["LimitChangeDto"][];
            /** @description Of what was looked at; accepted with it, unless something changed meanwhile. */
            digest: string;
            effectiveOn: string;
            /** @description Whether it is effective on a later day: then lives are judged by it from that day on. */
            later: boolean;
            /** @description How many serials were looked at. */
            looked: number;
            /** @description Part numbers of the revision that no component has. */
            partNumbersNotHeld: string[];
        };
        LimitRevisionDto: {
            /**
             * @description A manual states limits; a directive lowers them.
             * @enum {string}
             */
            basis: "directive" | "manual";
            /** @description The manual, or the directive with its number. */
            document: string;
            /** @description From this day on the revision is effective. */
            effectiveOn: string;
            revision: string;
            rows: components["schemas"]["LimitRowDto"][];
        };
        LimitRowDto: {
            /** @enum {string} */
            authorisation: "limited" | "not-authorised" | "not-limited";
            /**
             * @description From when the calendar life counts.
             * @enum {string|null}
             */
            calendarFrom?: "first-installation" | "new" | "overhaul" | null;
            /** @description A calendar life: so many days or months, flown or stored. */
            calendarSpan?: number | null;
            /** @enum {string|null} */
            calendarUnit?: "days" | "months" | null;
            cycles?: number | null;
            /** Format: uuid */
            engineModelId: string;
            minutes?: number | null;
            /**
             * @description How its months are counted: to the same day, unless told, or to the month's end.
             * @enum {string|null}
             */
            monthRule?: "month-end" | "same-day" | null;
            partNumber: string;
            /** @description The rating it holds at; at any, when null or left out. */
            ratingCode?: string | null;
        };
        LimitSideDto: {
            /**
             * @description The document that governs.
             * @enum {string|null}
             */
            basis: "directive" | "manual" | null;
            cycleLimit: number | null;
            document: string | null;
            flagged: boolean;
            goodThrough: string | null;
            /** @enum {string} */
            kind: "limited" | "not-authorised" | "not-limited" | "unsubstantiated";
            minuteLimit: number | null;
            /** @description Why no number stands. */
            reason: string | null;
            remainingCycles: number | null;
            remainingDays: number | null;
            remainingMinutes: number | null;
            revision: string | null;
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
            /** @description The share of the life that is used, exact. */
            used: components["schemas"]["CyclesDto"] | null;
        };
        LineEntryDto: {
            by: string;
            /** @description The beginning of the entry's hash. */
            hash: string | null;
            number: number | null;
            recordedAt: string;
        };
        LineTotalsDto: {
            /** @description Whole cycles, rounded up; null when not known. */
            cycles: number | null;
            /** @description Whole minutes; null when not known. */
            minutes: number | null;
        };
        LineWorkDto: {
            number: string;
            packageId: string;
            /** @description The step it is about; null where it is about the whole package. */
            stepId: string | null;
        };
        LinkedRequirementDto: {
            code: string;
            id: string;
        };
        LocationDto: {
            id: string;
            /** @enum {string} */
            kind: "quarantine" | "scrapped" | "shop" | "store" | "transferred-out";
            name: string;
        };
        LoggedFlightDto: {
            abortedTakeOffs: number;
            airframeId: string;
            entryRow: number | null;
            exceptions: components["schemas"]["FlightExceptionDto"][];
            fromStation: string;
            /** @description All that was ever noted of gaps before it, the latest first. */
            gapNotes: components["schemas"]["GapNoteDto"][];
            /** @description Gaps between it and the flight before, found as the log stands now. */
            gaps: components["schemas"]["FlightGapDto"][];
            id: string;
            landingAt: string;
            logPage: string;
            /** @description Whole minutes in service. */
            minutes: number;
            /** @description The flight it corrects. */
            replacesId: string | null;
            /** @description How it came in: 'entered', or 'import' with the line of its file. */
            source: string;
            starts: number;
            takeOffAt: string;
            toStation: string;
            touchAndGoes: number;
            voided: boolean;
            voidReason: string | null;
        };
        MissingDto: {
            capture: string;
            /** @enum {string} */
            code: "CAPTURE_MISSING" | "CAPTURE_REJECTED";
            label: string;
            point: string | null;
            reasons: components["schemas"]["EntryReasonDto"][];
        };
        MovedByStepDto: {
            at: string;
            /** @enum {string} */
            direction: "installation" | "removal";
            id: string;
            serialNumber: string;
        };
        MovedComponentDto: {
            id: string;
            partNumber: string;
            serialNumber: string;
            /** @description Since the installation that ended; null for what went on. */
            sinceInstalled: components["schemas"]["CountersDto"] | null;
            sinceNew: components["schemas"]["CountersDto"] | null;
        };
        MyWorkDto: {
            packages: components["schemas"]["WaitingPackageDto"][];
        };
        NewAccomplishmentDto: {
            /**
             * Format: uuid
             * @description What it was met on: exactly one of the three.
             */
            airframeId?: string | null;
            /** @description When it was met. Old papers name a day alone: give `on` then. */
            at?: string | null;
            /** Format: uuid */
            componentId?: string | null;
            /** @description What cycles are counted in; 1 unless told. */
            cycleDenominator?: number;
            /** @description Cycles since new as the papers say, in units of 1 / cycleDenominator. */
            cycles?: number | null;
            /** @description The papers that prove it. */
            evidence: string;
            /** @description How it was complied with, where there is a choice. */
            method?: string | null;
            /** @description Minutes since new as the papers say; left out, what the records here say at that instant. */
            minutes?: number | null;
            /** @description The day it was met, where the minute is not known; counters not given are read at its beginning. */
            on?: string | null;
            /** Format: uuid */
            positionId?: string | null;
            /** Format: uuid */
            requirementId: string;
        };
        NewAirframeDto: {
            /** Format: uuid */
            airframeTypeId: string;
            /** @description The zone in which days are counted, such as 'Europe/Vienna'; UTC unless told. */
            dayZone?: string;
            lessor?: string | null;
            manufacturedOn?: string | null;
            owner: string;
            registration: string;
            /** @description The code of a rule set. */
            ruleSet: string;
            serialNumber: string;
        };
        NewAirframeTypeDto: {
            designation: string;
            maker: string;
            positions: components["schemas"]["TypePositionDto"][];
        };
        NewAssessmentDto: {
            /**
             * Format: uuid
             * @description What it was assessed for: at most one of the five; none is everything it may be for.
             */
            airframeId?: string | null;
            /** Format: uuid */
            airframeTypeId?: string | null;
            applicable: boolean;
            /** @description Who assessed it. */
            assessedBy: string;
            /** Format: uuid */
            componentId?: string | null;
            /** Format: uuid */
            engineModelId?: string | null;
            /** @description How it is to be complied with, where there is a choice. */
            method?: string | null;
            /** @description The day of the assessment. */
            on: string;
            /** Format: uuid */
            positionId?: string | null;
            /** @description Why; asked for where it does not apply. */
            reason?: string | null;
            /** @description The paper on which it is found. */
            reference: string;
            /**
             * Format: uuid
             * @description The revision that was assessed; a new one needs its own.
             */
            requirementId: string;
        };
        NewAuthorisationDto: {
            /**
             * Format: uuid
             * @description The type of airframe it is for; for all types, when null or left out.
             */
            airframeTypeId?: string | null;
            /** @description The first day it is good for. */
            fromOn: string;
            /** Format: uuid */
            personId: string;
            /** @description The letter or list it rests on. */
            reference: string;
            /**
             * @description Signing work, second looks at work, or releases. The person needs a role that signs it too.
             * @enum {string}
             */
            scope: "inspection" | "release" | "work";
            /** @description The last day it is good for; without an end, when null or left out. */
            toOn?: string | null;
        };
        NewCalibrationDto: {
            /** @description The day it was made. */
            calibratedOn: string;
            /** @description The number of its certificate. */
            certificate: string;
            /** @description The day it is due again; the tool is good through that day. */
            dueOn: string;
        };
        NewCellRunDto: {
            abortedTakeOffs?: number;
            /** @description Of them, what counts as time in service by the engine's approved data; none when left out. */
            countedMinutes?: number;
            endedAt: string;
            /** @description What it was run for. */
            purpose: string;
            /** @description Whole minutes it ran; from start to end when left out. */
            runMinutes?: number;
            /** @description The document it is written in. */
            source: string;
            /** @description Whole minutes of UTC. */
            startedAt: string;
            starts: number;
        };
        NewComponentDto: {
            description: string;
            /**
             * Format: uuid
             * @description An engine's own model; for a module or part the model it belongs in.
             */
            engineModelId?: string | null;
            /** @description From its papers, where it came here used: a calendar life may count from it. */
            firstInstalledOn?: string | null;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            lessor?: string | null;
            /** @description Whether the component has a mandatory life; not, unless told. */
            lifeLimited?: boolean;
            maker: string;
            manufacturedOn?: string | null;
            owner: string;
            partNumber: string;
            /**
             * @description For a pod: whether it counts the airframe's use or that of its position.
             * @enum {string|null}
             */
            podClock?: "airframe" | "position" | null;
            serialNumber: string;
            slots?: components["schemas"]["NewSlotDto"][];
        };
        NewCycleRuleDto: {
            /**
             * Format: uuid
             * @description The airframe type it counts for; for any, when left out.
             */
            airframeTypeId?: string | null;
            denominator: number;
            perAbortedTakeOff: number;
            perFlight: number;
            perLanding: number;
            perStart: number;
            perTouchAndGo: number;
            revision: string;
            /** @description The document the rule comes from. */
            source: string;
        };
        NewDocumentDto: {
            /** @description As at when, for a status of lives: 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
            at?: string;
            /** @enum {string} */
            kind: "history" | "life-status" | "release-certificate";
            /** Format: uuid */
            subjectId: string;
            /**
             * @description A history is of an airframe or a component, a certificate of a release, a status of lives of a component.
             * @enum {string}
             */
            subjectKind: "airframe" | "component" | "release";
        };
        NewEngineModelDto: {
            cycleRules: components["schemas"]["NewCycleRuleDto"][];
            designation: string;
            /** @enum {string} */
            kind: "apu" | "engine";
            /**
             * @description How lives at several ratings are joined.
             * @enum {string}
             */
            lifeMethod: "lowest-limit" | "pro-rata";
            /** @description The document that says so. */
            lifeSource: string;
            maker: string;
            ratings: components["schemas"]["NewRatingDto"][];
        };
        NewEntryDto: {
            /** @description Key of the capture. */
            capture: string;
            /**
             * Format: uuid
             * @description The tool it was read with.
             */
            toolId?: string;
            typed: components["schemas"]["TorqueTypedDto"] | components["schemas"]["CountTypedDto"] | components["schemas"]["ComponentOffTypedDto"] | components["schemas"]["ComponentOnTypedDto"] | components["schemas"]["PapersTypedDto"] | components["schemas"]["LeakCheckTypedDto"] | components["schemas"]["ReadingsTypedDto"] | components["schemas"]["TextTypedDto"] | components["schemas"]["CheckTypedDto"];
        };
        NewFlightDto: {
            /** @description Aborted take-offs before it; none unless told. */
            abortedTakeOffs?: number;
            exceptions?: components["schemas"]["NewFlightExceptionDto"][];
            fromStation: string;
            landingAt: string;
            logPage: string;
            /** @description Starts of each engine; 1 unless told. */
            starts?: number;
            takeOffAt: string;
            toStation: string;
            touchAndGoes: number;
        };
        NewFlightExceptionDto: {
            /** @description Aborted take-offs that do not count for it. */
            abortedTakeOffs?: number;
            /** @description Flights that do not count for it. */
            flights?: number;
            /**
             * @description 'shut-down': it stood still for some minutes; 'not-running': it was dead for the whole flight.
             * @enum {string}
             */
            kind: "not-running" | "shut-down";
            /** @description Landings that do not count for it. */
            landings?: number;
            /** @description Minutes it did not run; asked of an engine shut down. */
            minutes?: number;
            positionNumber: number;
            /** @description Starts that do not count for it. */
            starts?: number;
            /** @description Touch-and-goes that do not count for it. */
            touchAndGoes?: number;
        };
        NewFlightsDto: {
            flights: components["schemas"]["NewFlightDto"][];
        };
        NewGapAcceptanceDto: {
            acceptedBy: string;
            /** Format: uuid */
            componentId: string;
            /** @description The most cycles that may have been used. */
            cycles?: number | null;
            /** @description The most minutes that may have been used. */
            minutes?: number | null;
            /**
             * Format: uuid
             * @description The opening balance it is for, whose trace is not shown; `cycles` and `minutes` then come on top of it.
             */
            openingId?: string | null;
            reference: string;
            /**
             * Format: uuid
             * @description The gap it is for; for all of them and for unknown ratings, when left out.
             */
            traceGapId?: string | null;
        };
        NewGapNoteDto: {
            /** @enum {string} */
            kind: "pages" | "stations";
            note: string;
        };
        NewGroundRunDto: {
            abortedTakeOffs?: number;
            /** @description Of them, what counts as time in service by the engine's approved data; none when left out. */
            countedMinutes?: number;
            endedAt: string;
            positionNumber: number;
            /** @description What it was run for. */
            purpose: string;
            /** @description Whole minutes it ran; from start to end when left out. */
            runMinutes?: number;
            /** @description The document it is written in. */
            source: string;
            /** @description Whole minutes of UTC. */
            startedAt: string;
            starts: number;
        };
        NewImportDto: {
            /** @description The file's text, at most 16 MiB. */
            content: string;
            fileName: string;
            /** @enum {string} */
            kind: "flights";
        };
        NewLifeLimitDto: {
            /** @enum {string} */
            authorisation: "limited" | "not-authorised" | "not-limited";
            /**
             * @description A manual states limits (unless told, it is one); a directive lowers them.
             * @enum {string}
             */
            basis?: "directive" | "manual";
            /**
             * @description From when the calendar life counts.
             * @enum {string|null}
             */
            calendarFrom?: "first-installation" | "new" | "overhaul" | null;
            /** @description A calendar life: so many days or months, flown or stored. */
            calendarSpan?: number | null;
            /** @enum {string|null} */
            calendarUnit?: "days" | "months" | null;
            cycles?: number | null;
            document: string;
            /** @description From this day on the revision is effective. */
            effectiveOn: string;
            /** Format: uuid */
            engineModelId: string;
            minutes?: number | null;
            /**
             * @description How its months are counted: to the same day, unless told, or to the month's end.
             * @enum {string|null}
             */
            monthRule?: "month-end" | "same-day" | null;
            partNumber: string;
            /** @description The rating it holds at; at any, when null or left out. */
            ratingCode?: string | null;
            revision: string;
        };
        NewLocationDto: {
            /** @enum {string} */
            kind: "quarantine" | "scrapped" | "shop" | "store" | "transferred-out";
            name: string;
        };
        NewlyOverDto: {
            /** @description Null for a requirement of an airframe or a position, which `serialNumber` names then. */
            componentId: string | null;
            description: string;
            /** @enum {string} */
            dimension: "cycles" | "days" | "minutes";
            /** @description The engine it is in; null when it is in none. */
            engineSerial: string | null;
            partNumber: string;
            /** @description Whole cycles, minutes or days left: 0 is the last one used, below 0 is an overrun. */
            remaining: number;
            /** @description Code and title of the requirement; null for a life limit. */
            requirement: string | null;
            serialNumber: string;
        };
        NewlyUnknownDto: {
            /** @description Null for a requirement of an airframe or a position, which `serialNumber` names then. */
            componentId: string | null;
            description: string;
            engineSerial: string | null;
            /** @enum {string} */
            kind: "not-authorised" | "not-verified";
            /** @description Why, in words. */
            reason: string | null;
            /** @description Code and title of the requirement; null for a life limit or the counters themselves. */
            requirement: string | null;
            serialNumber: string;
        };
        NewOccurrenceDto: {
            /** Format: uuid */
            airframeId: string;
            at: string;
            /** @description The papers that show it, such as the log page. */
            evidence: string;
            /** @enum {string} */
            kind: "main-base-return";
        };
        NewOpeningDto: {
            /** Format: uuid */
            airframeId?: string;
            /** @description The instant at which it holds; everything before is in it. Or `boundary`. */
            at?: string;
            /**
             * @description What it is counted from.
             * @enum {string}
             */
            basis: "new" | "overhaul" | "repair" | "shop-visit";
            /** @description When it holds, by a log page or a day. */
            boundary?: components["schemas"]["BoundaryDto"];
            /** Format: uuid */
            componentId?: string;
            /**
             * Format: uuid
             * @description The model whose ratings are named, for a part that is in no engine.
             */
            engineModelId?: string;
            rows: components["schemas"]["NewOpeningRowDto"][];
            /** @description The records it comes from. */
            source: string;
            /**
             * @description How well the records behind it show it: 'shown', an unbroken trace; 'stated', a statement alone; 'not-shown', a gap,
             *     by which lives that rest on it are not verified. 'shown' unless told.
             * @enum {string}
             */
            trace?: "not-shown" | "shown" | "stated";
            /** @description Who states it, or what is missing; asked for unless its trace is shown. */
            traceNote?: string | null;
        };
        NewOpeningRowDto: {
            /** @description What cycles are counted in; 1 unless told. */
            cycleDenominator?: number;
            /** @description Cycles (for an airframe: flights), in units of 1 / cycleDenominator; null when not known. */
            cycles?: number | null;
            /** @description Whole minutes; null when not known, which is not zero. */
            minutes?: number | null;
            /** @description The rating it was used at; null where that is not known or does not matter. */
            ratingCode?: string | null;
        };
        NewOrderDto: {
            /** @description The serial that goes on; left out when the place stays empty. */
            incomingSerial?: string | null;
            /** @description The serial that comes off; left out when the place is empty. */
            outgoingSerial?: string | null;
            /** @description The position's number; 0 is the auxiliary power unit. */
            positionNumber?: number;
            /** @description The rating an incoming engine runs at from then on; left out, it keeps the one recorded. */
            ratingCode?: string | null;
            /** @description Why it is changed. */
            reason: string;
            /** @description The location the outgoing component goes to. */
            removedToLocation?: string | null;
            /**
             * @description What is changed at the position.
             * @enum {string}
             */
            slot?: "apu" | "engine" | "pod";
            /**
             * Format: uuid
             * @description The place, for one inside a component; else the position and what is changed there.
             */
            slotId?: string;
        };
        NewPackageDto: {
            /** Format: uuid */
            airframeId?: string;
            /** Format: uuid */
            componentId?: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            /** @description What is to be changed; required for an engine change and a pod swap. */
            order?: components["schemas"]["NewOrderDto"];
            /**
             * Format: uuid
             * @description The revision of a procedure whose steps the package gets.
             */
            procedureId?: string;
            /** @description The number of the order as the planner's papers have it. */
            reference?: string;
            /** @description Requirements the work is to meet. */
            requirements?: components["schemas"]["NewPackageRequirementDto"][];
            /** @description The rule set a component is released under while it hangs on no airframe. */
            ruleSet?: string;
            /** @description Steps that no procedure has, after those of the procedure. */
            steps?: components["schemas"]["OwnStepDto"][];
            title: string;
        };
        NewPackageRequirementDto: {
            /** Format: uuid */
            airframeId?: string;
            /** Format: uuid */
            componentId?: string;
            /** Format: uuid */
            positionId?: string;
            /** Format: uuid */
            requirementId: string;
        };
        NewPersonDto: {
            fullName: string;
            /** @description The number of the person's maintenance licence. */
            licence?: string;
            /** @description False when the person chose this password; true unless told. */
            mustChangePassword?: boolean;
            /** @description The first password, at least 15 characters; the person must change it. */
            password: string;
            roles: ("administrator" | "auditor" | "certifying-staff" | "inspector" | "planner" | "records" | "technician")[];
            /** @description Lower-case letters, digits, dots and hyphens. */
            signInName: string;
        };
        NewPlannedFlightDto: {
            flightNumber?: string;
            fromStation?: string;
            landingAt: string;
            takeOffAt: string;
            toStation?: string;
        };
        NewPlannedFlightsDto: {
            flights: components["schemas"]["NewPlannedFlightDto"][];
            /** @description Why those before no longer hold; 'Replaced by a new plan' unless told. */
            reason?: string;
            /** @description Whether they replace all flights planned that are still to come. */
            replace: boolean;
        };
        NewPlannedRateDto: {
            /** @description The days the amounts are of: 7 for a week. */
            days: number;
            /** @description Flights in those days. */
            flights: number;
            fromOn: string;
            /** @description Minutes in those days. */
            minutes: number;
            /** @description Where it is from: the season's plan, a contract. */
            source: string;
        };
        NewPreservationDto: {
            at: string;
            /** Format: uuid */
            componentId: string;
            document: string;
            /** @description The last day it holds, from its document. */
            goodUntil: string;
            method: string;
        };
        NewProcedureDto: {
            /** @description Designation of the type of airframe it is for; left out when it is for an engine model, or for any. */
            airframeType?: string;
            code: string;
            content: components["schemas"]["ProcedureContentDto"];
            /** @description The approved data it is made from. */
            document: string;
            documentRevision: string;
            /** @description Designation of the model of engine it is for; left out when it is for a type of airframe, or for any. */
            engineModel?: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            revision: string;
            title: string;
        };
        NewRatingChangeDto: {
            /** @description The instant from which it is; or `boundary`. */
            at?: string;
            /** @description From when, by a log page or a day. */
            boundary?: components["schemas"]["BoundaryDto"];
            /** Format: uuid */
            componentId: string;
            ratingCode: string;
            /** @description The document or plate that shows it. */
            source: string;
        };
        NewRatingDto: {
            code: string;
            description?: string | null;
        };
        NewReadingDto: {
            /** @description When it was read, whole minutes of UTC. */
            at: string;
            /** @description Whole minutes of running. */
            minutes: number;
            /** @description The document it is written in. */
            source: string;
            starts: number;
        };
        NewReplacementDto: {
            at: string;
            /** @description The new counter's first reading. */
            first: components["schemas"]["CounterFiguresDto"];
            /** @description The old counter's last reading. */
            last: components["schemas"]["CounterFiguresDto"];
            source: string;
        };
        NewRequirementDto: {
            /**
             * Format: uuid
             * @description Of one type of airframe alone; for an airframe or a position.
             */
            airframeTypeId?: string | null;
            /**
             * @description What it follows: the airframe, what hangs at a position, an engine, or a part.
             * @enum {string}
             */
            anchor: "airframe" | "engine" | "part" | "position";
            code: string;
            /**
             * @description Whether the dimension that comes first governs (unless told), or the one that comes last.
             * @enum {string}
             */
            combine?: "first" | "last";
            /**
             * @description What the first time counts from.
             * @enum {string}
             */
            countedFrom: "accomplishment" | "date" | "effective" | "installation" | "new" | "overhaul" | "shop-visit";
            /**
             * @description What counts that was done before: nothing, by earlier revisions of its code (unless told), or by what it supersedes too.
             * @enum {string}
             */
            credit?: "none" | "revisions" | "superseded";
            document: string;
            /** @description From this day on the revision is effective; the newest of a code counts. */
            effectiveOn: string;
            /**
             * Format: uuid
             * @description Of one model alone; for an engine.
             */
            engineModelId?: string | null;
            /** @description The date it counts from, where it counts from a date. */
            fromOn?: string | null;
            /** @description Where its own text grants the window or variation: asked of a directive and an airworthiness limitation. */
            grantedBy?: string | null;
            /** @enum {string} */
            kind: "airworthiness-limitation" | "bulletin" | "check" | "directive" | "discard" | "inspection" | "overhaul";
            /** @description A bulletin whose applicability must be assessed, as a directive's must. */
            mandatory?: boolean;
            /**
             * @description Whether months go to the same day (unless told), or to the month's end.
             * @enum {string}
             */
            monthRule?: "month-end" | "same-day";
            /** @description Only for those on which all of these codes are accomplished. */
            onlyWith?: string[];
            /** @description For a part: its part number. */
            partNumber?: string | null;
            /** @description At one position alone, 0 for the auxiliary power unit; for a position. */
            positionNumber?: number | null;
            /** @description From where the next is counted after an accomplishment. */
            rebase?: components["schemas"]["RebaseDto"] | null;
            /** @description When it is due again; left out, it is met once. */
            repeat?: components["schemas"]["PhaseDto"] | null;
            revision: string;
            /** @description The first serial number it is for; left out, all up to the last. */
            serialFrom?: string | null;
            /** @description The last serial number it is for; left out, all from the first on. */
            serialTo?: string | null;
            /**
             * Format: uuid
             * @description The requirement of another code that it takes the place of.
             */
            supersedesId?: string | null;
            /**
             * Format: uuid
             * @description The requirement of another code that it ends, where it is accomplished.
             */
            terminatesId?: string | null;
            /** @description When it is due for the first time; left out, after the repeat. */
            threshold?: components["schemas"]["PhaseDto"] | null;
            title: string;
            /** @description Not for those on which one of these codes is accomplished. */
            unlessWith?: string[];
            /** @description How far one due may be varied by an approval, one time; not at all unless told. */
            variation?: components["schemas"]["GrantsDto"] | null;
            /** @description How far planned times hold around each due; nothing unless told. */
            window?: components["schemas"]["WindowDto"] | null;
        };
        NewResetDto: {
            /** @description The instant it was; or `boundary`. */
            at?: string;
            /** @description When it was, by a log page or a day. */
            boundary?: components["schemas"]["BoundaryDto"];
            /** Format: uuid */
            componentId: string;
            /** @description The document that shows it. */
            evidence: string;
            /** @enum {string} */
            kind: "overhaul" | "repair" | "shop-visit";
        };
        NewRuleRevisionDto: {
            /**
             * Format: uuid
             * @description The airframe type it counts for; for any, when left out.
             */
            airframeTypeId?: string | null;
            denominator: number;
            /** @description From this day on, 00:00 UTC, what is flown and run counts by it. */
            effectiveOn: string;
            perAbortedTakeOff: number;
            perFlight: number;
            perLanding: number;
            perStart: number;
            perTouchAndGo: number;
            revision: string;
            /** @description The document the rule comes from. */
            source: string;
        };
        NewShopChangeDto: {
            /** @description When; the return, when left out. */
            at?: string | null;
            /** @description The release certificate of what went on. */
            certificate?: string | null;
            /** @description How a life-limited part that came off is controlled. */
            disposition?: components["schemas"]["DispositionDto"] | null;
            /**
             * Format: uuid
             * @description What went on; left out when the place stayed empty.
             */
            incomingId?: string | null;
            /** @description The serial that came off; left out when the place was empty. */
            outgoingSerial?: string | null;
            reason: string;
            /** @description Where what came off went, by the name of the location. */
            removedToLocation?: string | null;
            /** Format: uuid */
            slotId: string;
        };
        NewShopReturnDto: {
            accomplishments?: components["schemas"]["ShopAccomplishmentDto"][];
            /** @description The release certificate it came with. */
            certificate?: string | null;
            changes?: components["schemas"]["NewShopChangeDto"][];
            /** @description Where it went, by the name of the location. */
            locationName: string;
            preservation?: components["schemas"]["ShopPreservationDto"] | null;
            /** @description The rating an engine runs at from then on; left out, it stays. */
            ratingCode?: string | null;
            /** @description The shop's report. */
            report: string;
            resets?: components["schemas"]["ShopResetDto"][];
            returnedAt: string;
            tag?: components["schemas"]["ShopTagDto"] | null;
            workDone: string;
        };
        NewShopVisitDto: {
            /** Format: uuid */
            componentId: string;
            /** @description The shop, by the name of its location. */
            locationName: string;
            /** @description The order it is sent under. */
            orderReference: string;
            /** @description When it went. */
            sentAt: string;
            /** @description What the shop is asked to do. */
            workscope: string;
        };
        NewSlotDto: {
            /** @enum {string} */
            kind: "module" | "part";
            /** @description Whether a part with a mandatory life belongs here: an empty place then blocks a release. */
            lifeLimited: boolean;
            name: string;
        };
        NewTagDto: {
            at: string;
            /** @description The release certificate; a serviceable tag rests on one. */
            certificate?: string | null;
            /** Format: uuid */
            componentId: string;
            /** @description Who issued it; the person who records it, when left out. */
            issuedBy?: string | null;
            /** @description Why: the fault, what was found, or what made it serviceable. */
            reason: string;
            /** @enum {string} */
            status: "quarantine" | "serviceable" | "unserviceable";
            tagNumber: string;
        };
        NewTestCellDto: {
            name: string;
        };
        NewToolDto: {
            /** @description What it is, such as "torque wrench, 1/2 inch drive". */
            description: string;
            /** @description The largest deviation its certificate allows, in percent, as typed. */
            deviation?: string | null;
            /** @enum {string} */
            kind: "gauge" | "other" | "torque-wrench";
            /** @description The highest value it may be used at, in its unit, as typed. */
            rangeHigh?: string | null;
            /** @description The lowest value it may be used at, in its unit, as typed. */
            rangeLow?: string | null;
            /** @description As marked on the tool; one serial number is one tool. */
            serialNumber: string;
            /** @description Of a torque wrench N·m, lbf·ft, lbf·in or kgf·m; of a gauge any unit, as text. */
            unit?: string | null;
        };
        NewTraceGapDto: {
            /** Format: uuid */
            componentId: string;
            /** @description The instant it begins; or `fromBoundary`. */
            from?: string;
            /** @description When it begins, by a log page or a day. */
            fromBoundary?: components["schemas"]["BoundaryDto"];
            note: string;
            /** @description The instant it ends; or `toBoundary`. */
            to?: string;
            toBoundary?: components["schemas"]["BoundaryDto"];
        };
        NewVariationDto: {
            /**
             * Format: uuid
             * @description The last accomplishment that was seen, before what is due; left out, whichever is the last.
             */
            accomplishmentId?: string | null;
            /**
             * Format: uuid
             * @description What it is for: exactly one of the three.
             */
            airframeId?: string | null;
            approvedBy: string;
            /** Format: uuid */
            componentId?: string | null;
            cycles?: number | null;
            /** @description Days past the day it is due on, whether that is counted in days or months. */
            days?: number | null;
            /** @description Whole minutes past the due. */
            minutes?: number | null;
            /** @description The day of the approval. */
            on: string;
            /** Format: uuid */
            positionId?: string | null;
            /** @description What could not be foreseen. */
            reason: string;
            /** @description The paper by which it is approved. */
            reference: string;
            /** Format: uuid */
            requirementId: string;
        };
        ObjectionDto: {
            code: string;
            fix: string;
            positionNumber: number | null;
            reason: string;
            /** @enum {string} */
            severity: "advisory" | "blocking";
            subject: components["schemas"]["ObjectionSubjectDto"];
        };
        ObjectionSubjectDto: {
            id: string;
            kind: string;
            /** @description In words: the part and where it is. */
            label: string;
        };
        OccurrenceDto: {
            airframeId: string;
            at: string;
            evidence: string;
            id: string;
            /** @enum {string} */
            kind: "main-base-return";
            voided: boolean;
            voidReason: string | null;
        };
        OpenedByDto: {
            number: number;
            stepId: string;
            title: string;
        };
        OpeningDto: {
            airframeId: string | null;
            at: string;
            /** @enum {string} */
            basis: "new" | "overhaul" | "repair" | "shop-visit";
            componentId: string | null;
            id: string;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            rows: components["schemas"]["OpeningRowDto"][];
            source: string;
            /** @description What was typed where it is no instant. */
            text: string | null;
            /** @enum {string} */
            trace: "not-shown" | "shown" | "stated";
            traceNote: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        OpeningRowDto: {
            cycleDenominator: number;
            cycles: number | null;
            id: string;
            minutes: number | null;
            ratingCode: string | null;
        };
        OpenItemDto: {
            item: components["schemas"]["AccountableItemDto"];
            openedBy: components["schemas"]["OpenedByDto"];
        };
        OpenVisitDto: {
            id: string;
            orderReference: string;
            sentAt: string;
            shop: string;
        };
        OrderDto: {
            /** @description Who confirmed it when it was amended. */
            confirmedBy: string | null;
            id: string;
            incoming: components["schemas"]["OrderedComponentDto"] | null;
            outgoing: components["schemas"]["OrderedComponentDto"] | null;
            positionId: string | null;
            /** @description Null for a place inside a component. */
            positionNumber: number | null;
            ratingCode: string | null;
            reason: string;
            removedToLocation: string | null;
            slot: string;
            slotId: string;
            /** @description The name of the place. */
            slotName: string;
        };
        OrderedComponentDto: {
            description: string;
            id: string;
            kind: string;
            partNumber: string;
            /** @description Where the register has it now. */
            place: string;
            serialNumber: string;
        };
        OverrunDto: {
            airframeId: string | null;
            /** @description Whole cycles, minutes or days beyond it at the worst, rounded up. */
            by: number;
            /** @description What was flown: exactly one of the three. */
            componentId: string | null;
            description: string;
            /** @enum {string} */
            dimension: "cycles" | "days" | "minutes";
            document: string;
            /** @description The last day it was good through; null for counters. */
            dueOn: string | null;
            first: components["schemas"]["FlightAtEndDto"];
            /** @description How many flights were flown beyond it. */
            flights: number;
            /** @description Whether it goes on: it is due still, or the part may fly on as it is. */
            isOpen: boolean;
            /** @enum {string} */
            kind: "life-limit" | "requirement";
            last: components["schemas"]["FlightAtEndDto"];
            /** @description The limit in cycles or minutes, or the counter since new at which the duty was due; null for a day. */
            limit: number | null;
            partNumber: string;
            positionId: string | null;
            /** @description Code and title of the requirement; null for a life limit. */
            requirement: string | null;
            requirementId: string | null;
            revision: string;
            /** @description What it is called: a serial number, a registration, or a position. */
            serialNumber: string;
        };
        OwnStepDto: {
            captures?: (components["schemas"]["TorqueCaptureDto"] | components["schemas"]["CountCaptureDto"] | components["schemas"]["ComponentOffCaptureDto"] | components["schemas"]["ComponentOnCaptureDto"] | components["schemas"]["PapersCaptureDto"] | components["schemas"]["LeakCheckCaptureDto"] | components["schemas"]["ReadingsCaptureDto"] | components["schemas"]["TextCaptureDto"] | components["schemas"]["CheckCaptureDto"] | components["schemas"]["PhotoCaptureDto"])[];
            /** @enum {string} */
            inspection: "independent" | "none";
            /**
             * @description Signing it moves the component of the order.
             * @enum {string|null}
             */
            moves?: "installation" | "removal" | null;
            text?: string | null;
            /** @description One action, verb first. */
            title: string;
        };
        PackageAirframeDto: {
            id: string;
            registration: string;
        };
        PackageChangeDto: {
            at: string;
            incoming: components["schemas"]["MovedComponentDto"] | null;
            outgoing: components["schemas"]["MovedComponentDto"] | null;
            /** @description The log page or the date the moment was told by; null when it is known to the minute. */
            placed: string | null;
            /** @description Null for a change inside a component. */
            position: components["schemas"]["ChangePositionDto"] | null;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            reason: string;
            slot: string;
            /** @description The name of the place. */
            slotName: string;
        };
        PackageComponentDto: {
            description: string;
            id: string;
            kind: string;
            partNumber: string;
            serialNumber: string;
        };
        PackageDto: {
            /** @description What it is on; null for a package of a component. */
            airframe: components["schemas"]["PackageAirframeDto"] | null;
            changes: components["schemas"]["PackageChangeDto"][];
            component: components["schemas"]["PackageComponentDto"] | null;
            id: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            number: string;
            openedAt: string;
            /** @description What it is ordered to change; null where nothing is, and for a change logged as one act. */
            order: components["schemas"]["OrderDto"] | null;
            /** @description The place it changes, such as 'Position 3'; null where nothing is changed. */
            place: string | null;
            procedure: components["schemas"]["PackageProcedureDto"] | null;
            /** @description The number of the order as the planner's papers have it. */
            reference: string | null;
            release: components["schemas"]["PackageReleaseDto"] | null;
            /** @description The number of its release; null while it has none. */
            releaseNumber: string | null;
            requirements: components["schemas"]["PackageRequirementDto"][];
            /** @description The code of the rule set it is released under. */
            ruleSet: string;
            /** @enum {string} */
            status: "open" | "released" | "withdrawn";
            /** @description None in a change logged as one act. */
            steps: components["schemas"]["StepCountsDto"];
            title: string;
            version: number;
            /** @description Null unless it is withdrawn. */
            withdrawal: components["schemas"]["PackageWithdrawalDto"] | null;
        };
        PackageProcedureDto: {
            code: string;
            document: string;
            documentRevision: string;
            id: string;
            revision: string;
            title: string;
        };
        PackageReleaseDto: {
            id: string;
            licence: string | null;
            number: string;
            person: string;
            signedAt: string;
        };
        PackageRequirementDto: {
            airframeId: string | null;
            code: string;
            componentId: string | null;
            document: string;
            id: string;
            kind: string;
            positionId: string | null;
            requirementId: string;
            revision: string;
            subject: string;
            title: string;
        };
        PackageRowDto: {
            /** @description What it is on; null for a package of a component. */
            airframe: components["schemas"]["PackageAirframeDto"] | null;
            component: components["schemas"]["PackageComponentDto"] | null;
            id: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            number: string;
            openedAt: string;
            /** @description The place it changes, such as 'Position 3'; null where nothing is changed. */
            place: string | null;
            /** @description The number of the order as the planner's papers have it. */
            reference: string | null;
            /** @description The number of its release; null while it has none. */
            releaseNumber: string | null;
            /** @enum {string} */
            status: "open" | "released" | "withdrawn";
            /** @description None in a change logged as one act. */
            steps: components["schemas"]["StepCountsDto"];
            title: string;
            version: number;
        };
        PackagesPageDto: {
            next: string | null;
            rows: components["schemas"]["PackageRowDto"][];
        };
        PackageWithdrawalDto: {
            at: string;
            person: string;
            reason: string;
        };
        PapersCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "papers";
            label: string;
        };
        PapersTypedDto: {
            documentNumber: string;
            documentSerial: string;
            /** @enum {string} */
            kind: "papers";
            plateSerial: string;
            /** @enum {string} */
            tag: "serviceable" | "unserviceable";
        };
        PartCountersDto: {
            sinceNew: components["schemas"]["CountersDto"];
        };
        PartDto: {
            counters: components["schemas"]["PartCountersDto"];
            description: string;
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            life: components["schemas"]["LifeDto"] | null;
            lifeLimited: boolean;
            partNumber: string;
            serialNumber: string;
            slots: components["schemas"]["SlotDto"][];
        };
        PassedDto: {
            /** @description How many passed. */
            count: number;
            label: string;
            /** @description Of how many looked at. */
            of: number;
        };
        PeopleDto: {
            rows: components["schemas"]["PersonDto"][];
        };
        PersonDto: {
            /** @description When the person was shut out; null while they may sign in. */
            disabledAt: string | null;
            fullName: string;
            id: string;
            licence: string | null;
            mustChangePassword: boolean;
            roles: string[];
            signInName: string;
            version: number;
        };
        PhaseDto: {
            cycles?: number | null;
            days?: number | null;
            /**
             * @description Due when this happens next; until then nothing is due by it.
             * @enum {string|null}
             */
            event?: "installation" | "main-base-return" | "removal" | "shop-visit" | null;
            /** @description Whole minutes in service. */
            minutes?: number | null;
            /** @description Calendar months. */
            months?: number | null;
            /** @description Not to be exceeded, from the same point: it governs as soon as it comes, whatever the rest combines. */
            notToExceed?: components["schemas"]["IntervalDto"] | null;
        };
        PhotoCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "photo";
            label: string;
            required: boolean;
        };
        PhotoTypedDto: {
            fileName: string;
            /** @enum {string} */
            kind: "photo";
            /** @description Of its bytes, hexadecimal. */
            sha256: string;
        };
        PlacedStayDto: {
            /** @description The instant its beginning means. */
            at: string;
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            /** @description The stay that ended by it, if any. */
            endedStayId: string | null;
            id: string;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
        };
        PlaceDto: {
            airframeId: string | null;
            /** @enum {string} */
            kind: "location" | "none" | "slot";
            /** @description In words, to be shown. */
            label: string;
            parentId: string | null;
            parentSerial: string | null;
            positionNumber: number | null;
            /** @enum {string|null} */
            precision: "day" | "minute" | "page" | null;
            since: string | null;
            slotName: string | null;
        };
        PlacementDto: {
            /** @description When it came there. Its open stay ends then: at a location, or in another component when it goes to a location. */
            boundary: components["schemas"]["BoundaryDto"];
            /** Format: uuid */
            componentId: string;
            /** @description What the counter showed of an auxiliary power unit that comes to a position; asked of no other. */
            counterReading?: components["schemas"]["CounterFiguresDto"];
            /** @description The location it goes to. */
            locationName?: string;
            reason?: string;
            /**
             * Format: uuid
             * @description The slot it goes into; or else the location's name.
             */
            slotId?: string;
            /** @description When it left again, for a stay of the past. */
            until?: components["schemas"]["BoundaryDto"];
            /** @description What it showed when it left again. */
            untilCounterReading?: components["schemas"]["CounterFiguresDto"];
        };
        PlannedFlightDto: {
            flightNumber: string | null;
            fromStation: string | null;
            id: string;
            landingAt: string;
            /** @description Whole minutes. */
            minutes: number;
            takeOffAt: string;
            toStation: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        PlannedFlightsDto: {
            airframeId: string;
            /** @description Those still to come, in order. */
            flights: components["schemas"]["PlannedFlightDto"][];
            /** @description How many planned flights are past and have no flight in the log: what they used is counted nowhere. */
            notLogged: number;
            registration: string;
        };
        PlannedRateDto: {
            airframeId: string;
            days: number;
            flights: number;
            fromOn: string;
            id: string;
            /** @description Whether it is the one that counts today. */
            inForce: boolean;
            minutes: number;
            source: string;
            voided: boolean;
            voidReason: string | null;
        };
        PositionBalanceDto: {
            difference: components["schemas"]["CountsDto"];
            empty: components["schemas"]["CountsDto"];
            flown: components["schemas"]["CountsDto"];
            notRunning: components["schemas"]["CountsDto"];
            onEngines: components["schemas"]["CountsDto"];
            positionId: string;
            positionNumber: number;
            runs: components["schemas"]["CountsDto"];
            /** @description In order of time; what took use without having been there comes last. */
            spans: components["schemas"]["BalanceSpanDto"][];
        };
        PositionCardDto: {
            /** @description Since when no engine is there; null when one is, or none ever was. */
            emptySince: string | null;
            engine: components["schemas"]["InstalledEngineDto"] | null;
            /** @enum {string} */
            kind: "apu" | "engine";
            label: string;
            /** @enum {string} */
            mount: "left-wing" | "right-wing" | "tail";
            number: number;
            pod: components["schemas"]["InstalledPodDto"] | null;
            positionId: string;
        };
        PositionCountersDto: {
            addends: components["schemas"]["ClockAddendDto"][];
            id: string;
            label: string;
            number: number;
            total: components["schemas"]["CountersDto"];
        };
        PositionsAirframeDto: {
            counters: components["schemas"]["CountersDto"];
            id: string;
            lastLandingAt: string | null;
            lastLogPage: string | null;
            registration: string;
            ruleSet: string;
            serialNumber: string;
            type: string;
        };
        PositionsDto: {
            airframe: components["schemas"]["PositionsAirframeDto"];
            /** @description The instant asked for; null is now. */
            at: string | null;
            positions: components["schemas"]["PositionCardDto"][];
        };
        PositionSlotDto: {
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "pod";
        };
        PreservationDto: {
            at: string;
            componentId: string;
            /** @description Whether it is the one that counts now. */
            counts: boolean;
            document: string;
            goodUntil: string;
            id: string;
            method: string;
            /** @description Whether its last day has passed. */
            over: boolean;
            voided: boolean;
            voidReason: string | null;
        };
        ProblemDto: {
            /** @description The reason as a word for programs; it never changes its meaning. */
            code: string;
            detail: string;
            fields: components["schemas"]["FieldProblemDto"][];
            requestId: string;
            status: number;
            title: string;
            type: string;
        };
        ProcedureContentDto: {
            groups: components["schemas"]["StepGroupDto"][];
            items: components["schemas"]["AccountableItemDto"][];
            steps: components["schemas"]["StepDefinitionDto"][];
        };
        ProcedureDto: {
            airframeType: string | null;
            code: string;
            content: components["schemas"]["ProcedureContentDto"];
            /** @description SHA-256 of its content in canonical form, hexadecimal. */
            contentHash: string;
            document: string;
            documentRevision: string;
            engineModel: string | null;
            id: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            revision: string;
            title: string;
        };
        ProcedureRowDto: {
            /** @description Designation of the type of airframe it is for. */
            airframeType: string | null;
            code: string;
            document: string;
            documentRevision: string;
            /** @description Designation of the model of engine it is for. */
            engineModel: string | null;
            id: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            /** @description Whether no later revision of it is recorded. */
            latest: boolean;
            revision: string;
            /** @description How many steps it has. */
            steps: number;
            title: string;
        };
        RatingChangeDto: {
            at: string;
            componentId: string;
            id: string;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            ratingCode: string;
            source: string;
            /** @description What was typed where it is no instant. */
            text: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        RatingDifferenceDto: {
            after: string | null;
            before: string | null;
        };
        RatingDto: {
            code: string;
            description: string | null;
            id: string;
        };
        ReadinessDto: {
            airframeId: string;
            /** @enum {string} */
            basis: "flights" | "kept" | "rate";
            /** @description What the flying is, in words. */
            basisText: string;
            /** @description The zone in which its days are counted. */
            dayZone: string;
            flights: components["schemas"]["ReadinessFlightDto"][];
            /** @description What the flights reach, in the order in which they do: first what forbids a flight. */
            items: components["schemas"]["ReadinessItemDto"][];
            /** @description The last flight that may be made, from 1; 0 when none may. */
            lastAllowed: number;
            /** @description How many planned flights are past and have no flight in the log: what they used is counted nowhere. */
            notLogged: number;
            /** @description Of which nothing can be stated. */
            notVerified: components["schemas"]["ReadinessItemDto"][];
            registration: string;
            /** @description The verdict in words. */
            statement: string;
            /**
             * @description 'not-verified': no readiness can be stated; 'none', 'some' or 'all' of the flights may be made.
             * @enum {string}
             */
            verdict: "all" | "no-flights" | "none" | "not-verified" | "some";
        };
        ReadinessFlightDto: {
            /** @description Whether nothing known is over at or before its landing. */
            allowed: boolean;
            flightNumber: string | null;
            fromStation: string | null;
            landingAt: string;
            minutes: number;
            /** @description Its place, from 1. */
            number: number;
            takeOffAt: string;
            toStation: string | null;
        };
        ReadinessItemDto: {
            /** @description The first flight, from 1, that must not be made; null: none. */
            breaksOnFlight: number | null;
            /** @enum {string} */
            combine: "first" | "last";
            componentId: string | null;
            /** @description The flight, from 1, in which it goes past its due; null: in none. */
            dueOnFlight: number | null;
            engineSerial: string | null;
            /** @enum {string} */
            kind: "counters" | "life-limit" | "requirement";
            left: components["schemas"]["ReadinessLeftDto"][];
            name: string;
            of: string;
            positionNumber: number | null;
            /** @description Why nothing can be stated, or why it is over. */
            reason: string | null;
            requirementId: string | null;
        };
        ReadinessLeftDto: {
            /** @enum {string} */
            dimension: "cycles" | "days" | "minutes" | "months";
            dueOn: string | null;
            remaining: number;
            /** @description The same until the end of what is granted past the due. */
            untilLatest: number;
        };
        ReadingRowDto: {
            high: string | null;
            key: string;
            label: string;
            low: string | null;
            unit: string;
        };
        ReadingsCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "readings";
            label: string;
            rows: components["schemas"]["ReadingRowDto"][];
        };
        ReadingsTypedDto: {
            /** @enum {string} */
            kind: "readings";
            values: {
                [key: string]: string;
            };
        };
        RebasedDto: {
            /** @enum {string} */
            beyond: "from-done" | "from-due";
            /** @enum {string} */
            early: "from-done" | "from-due";
            /** @enum {string} */
            varied: "from-done" | "from-due";
            /** @enum {string} */
            within: "from-done" | "from-due";
        };
        RebaseDto: {
            /**
             * @description Past all that is granted; from what was done unless told.
             * @enum {string}
             */
            beyond?: "from-done" | "from-due";
            /**
             * @description Early, before the window; from what was done unless told.
             * @enum {string}
             */
            early?: "from-done" | "from-due";
            /**
             * @description Late under an approved variation; from what was due unless told.
             * @enum {string}
             */
            varied?: "from-done" | "from-due";
            /**
             * @description Inside the window; from what was due unless told.
             * @enum {string}
             */
            within?: "from-done" | "from-due";
        };
        RecordedChangeDto: {
            at: string;
            consequences: components["schemas"]["ConsequencesDto"];
            /** @description The package's id. */
            id: string;
            /** @enum {string} */
            kind: "engine-change" | "pod-swap";
            number: string;
            objections: components["schemas"]["ObjectionDto"][];
            version: number;
        };
        RecordedGapAcceptanceDto: {
            acceptedBy: string;
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            cycles: number | null;
            id: string;
            minutes: number | null;
            openingId: string | null;
            reference: string;
            traceGapId: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        RecordedOpeningDto: {
            airframeId: string | null;
            at: string;
            /** @enum {string} */
            basis: "new" | "overhaul" | "repair" | "shop-visit";
            componentId: string | null;
            consequences: components["schemas"]["ConsequencesDto"];
            id: string;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            rows: components["schemas"]["OpeningRowDto"][];
            source: string;
            /** @description What was typed where it is no instant. */
            text: string | null;
            /** @enum {string} */
            trace: "not-shown" | "shown" | "stated";
            traceNote: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        RecordedRatingChangeDto: {
            at: string;
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            id: string;
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            ratingCode: string;
            source: string;
            /** @description What was typed where it is no instant. */
            text: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        RecordedResetDto: {
            at: string;
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            evidence: string;
            id: string;
            /** @enum {string} */
            kind: "overhaul" | "repair" | "shop-visit";
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            /** @description What was typed where it is no instant. */
            text: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        RecordedTraceGapDto: {
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            from: string;
            /** @enum {string} */
            fromPrecision: "day" | "minute" | "page";
            /** @description What was typed where the beginning is no instant: a log page or a date. */
            fromText: string | null;
            id: string;
            note: string;
            to: string;
            /** @enum {string} */
            toPrecision: "day" | "minute" | "page";
            toText: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        ReleaseCheckDto: {
            /** @description The state of the records the check is on. */
            asOf: string;
            /** @description SHA-256 of everything the check looked at; sent back at signing. */
            digest: string;
            objections: components["schemas"]["ObjectionDto"][];
            packageNumber: string;
            passed: components["schemas"]["PassedDto"][];
            /** @description True when the package is released: this is then what its release froze. */
            released: boolean;
            ruleSet: components["schemas"]["ReleaseRuleSetDto"];
            /** @description The words to be signed; who signs and when is added at signing. */
            statement: string;
            /** @description What was done, in one sentence. */
            summary: string;
            /** @description The package's version. */
            version: number;
        };
        ReleaseNoteDto: {
            /** @description The registration; null for a component on no airframe. */
            airframe: string | null;
            /** @description Null while it is being prepared, which takes seconds. */
            certificate: components["schemas"]["CertificateDto"] | null;
            /** @description SHA-256 of what was signed: statement, signer, moment and the frozen content's own hash. */
            contentHash: string;
            digest: string;
            id: string;
            licence: string | null;
            number: string;
            objections: components["schemas"]["ObjectionDto"][];
            packageId: string;
            packageNumber: string;
            passed: components["schemas"]["PassedDto"][];
            person: string;
            ruleSet: components["schemas"]["ReleaseRuleSetDto"];
            signedAt: string;
            /** @description SHA-256 of the content the check looked at, as frozen. */
            snapshotHash: string;
            /** @description The whole statement, as signed. */
            statement: string;
            /** @description The registration, or the component's description and serial number. */
            subject: string;
            summary: string;
            /** @description The package's version after the release. */
            version: number;
        };
        ReleaseRuleSetDto: {
            code: string;
            name: string;
            /** @description The rule the statement follows. */
            source: string;
        };
        RequirementDifferenceDto: {
            after: components["schemas"]["BuiltRequirementDto"] | null;
            before: components["schemas"]["BuiltRequirementDto"] | null;
            code: string;
            requirementId: string;
            subject: string;
        };
        RequirementDto: {
            /** @description Maker and designation of the type of airframe. */
            airframeType: string | null;
            airframeTypeId: string | null;
            /** @enum {string} */
            anchor: "airframe" | "engine" | "part" | "position";
            code: string;
            /** @enum {string} */
            combine: "first" | "last";
            /** @enum {string} */
            countedFrom: "accomplishment" | "date" | "effective" | "installation" | "new" | "overhaul" | "shop-visit";
            /** @enum {string} */
            credit: "none" | "revisions" | "superseded";
            document: string;
            effectiveOn: string;
            /** @description Maker and designation of the model. */
            engineModel: string | null;
            engineModelId: string | null;
            fromOn: string | null;
            /** @description Where its own text grants the window or variation. */
            grantedBy: string | null;
            id: string;
            /** @description Whether it is the newest revision of its code, and not voided. */
            inForce: boolean;
            /** @enum {string} */
            kind: "airworthiness-limitation" | "bulletin" | "check" | "directive" | "discard" | "inspection" | "overhaul";
            mandatory: boolean;
            /** @enum {string} */
            monthRule: "month-end" | "same-day";
            /** @description Whether its applicability must be assessed: of a directive, and of a mandatory bulletin. */
            needsAssessment: boolean;
            /** @description Only for those on which all of these codes are accomplished. */
            onlyWith: string[];
            /** @description How many airframes, positions or components it is due on, or not verified. */
            open: number;
            partNumber: string | null;
            positionNumber: number | null;
            rebase: components["schemas"]["RebasedDto"];
            /** @description Null: it is met once. */
            repeat: components["schemas"]["GrantedDto"] | null;
            revision: string;
            serialFrom: string | null;
            serialTo: string | null;
            /** @description The requirement in force that takes the place of this code. */
            supersededBy: components["schemas"]["LinkedRequirementDto"] | null;
            /** @description The requirement of another code whose place it takes. */
            supersedes: components["schemas"]["LinkedRequirementDto"] | null;
            /** @description The requirement of another code that it ends, where it is accomplished. */
            terminates: components["schemas"]["LinkedRequirementDto"] | null;
            /** @description Null: the first time is due after the repeat. */
            threshold: components["schemas"]["GrantedDto"] | null;
            title: string;
            /** @description Not for those on which one of these codes is accomplished. */
            unlessWith: string[];
            /** @description How far one due may be varied by an approval; null: not at all. */
            variation: components["schemas"]["GrantedTiersDto"] | null;
            voided: boolean;
            voidReason: string | null;
            /** @description Null: planned times shift with every accomplishment. */
            window: components["schemas"]["GrantedWindowDto"] | null;
        };
        RequirementStatusDto: {
            airframeId: string | null;
            /** @description The assessment that holds here; null: it was never assessed. */
            assessment: components["schemas"]["AssessmentStatusDto"] | null;
            /** @description What closed it: what took its place, or ended it by being accomplished. */
            closedBy: components["schemas"]["LinkedRequirementDto"] | null;
            code: string;
            /** @enum {string} */
            combine: "first" | "last";
            componentId: string | null;
            /**
             * @description Whether the threshold counts still, or a repeat; null where nothing is due.
             * @enum {string|null}
             */
            counting: "repeat" | "threshold" | null;
            document: string;
            dues: components["schemas"]["DimensionStatusDto"][];
            /** @description The event at which it is due; null where it is at none, or nothing is due. */
            event: components["schemas"]["EventStatusDto"] | null;
            /**
             * @description The dimension that governs; null where none can be told, or its event does.
             * @enum {string|null}
             */
            governing: "cycles" | "days" | "minutes" | "months" | null;
            kind: string;
            lastDone: components["schemas"]["LastDoneDto"] | null;
            /** @description Whether its applicability must be assessed. */
            needsAssessment: boolean;
            positionId: string | null;
            /** @description The day on which it is reached at the average use of the last 90 days; a forecast, never a limit. */
            projectedOn: string | null;
            /** @description Why it is not verified, not applicable or closed by another. */
            reason: string | null;
            /** @description The codes of those reasons, such as NEVER_ASSESSED, SERIAL_OUTSIDE or SUPERSEDED. */
            reasonCodes: string[];
            requirementId: string;
            revision: string;
            /** @enum {string} */
            status: "closed" | "in-tolerance" | "later" | "not-applicable" | "not-verified" | "over" | "planned" | "soon";
            /** @description What it is held against, in words. */
            subject: string;
            title: string;
            variation: components["schemas"]["VariationStatusDto"] | null;
        };
        RequirementViewDto: {
            /** @description Of all revisions of its code, the latest first. */
            accomplishments: components["schemas"]["AccomplishmentDto"][];
            /** @description Of all revisions of its code, the latest first. */
            assessments: components["schemas"]["AssessmentDto"][];
            requirement: components["schemas"]["RequirementDto"];
            /** @description All revisions of its code, the newest first. */
            revisions: components["schemas"]["RequirementDto"][];
            /** @description The most pressing first; none unless it is in force. */
            statuses: components["schemas"]["RequirementStatusDto"][];
            /** @description Of all revisions of its code, the latest first. */
            variations: components["schemas"]["VariationDto"][];
        };
        ResetDto: {
            at: string;
            componentId: string;
            evidence: string;
            id: string;
            /** @enum {string} */
            kind: "overhaul" | "repair" | "shop-visit";
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            /** @description What was typed where it is no instant. */
            text: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        RuleRevisionDto: {
            /** @description Maker and designation of the type of airframe; null for any. */
            airframeType: string | null;
            airframeTypeId: string | null;
            denominator: number;
            /** @description From this day on, 00:00 UTC; null: always. */
            effectiveOn: string | null;
            id: string;
            /** @description Whether it is the one that counts today. */
            inForce: boolean;
            perAbortedTakeOff: number;
            perFlight: number;
            perLanding: number;
            perStart: number;
            perTouchAndGo: number;
            revision: string;
            source: string;
            voided: boolean;
            voidReason: string | null;
        };
        RuleRevisionsDto: {
            engineModelId: string;
            rows: components["schemas"]["RuleRevisionDto"][];
        };
        RuleSetDto: {
            code: string;
            /**
             * @description Where a counted day begins.
             * @enum {string}
             */
            dayZone: "operator" | "utc";
            /** @description From this day on. */
            effectiveFrom: string;
            name: string;
            /** @description Whether one person may inspect their own work again, where the case is recorded. */
            onePersonReinspection: boolean;
            /** @description What the signer of a release states. */
            releaseStatement: string;
            signerIdentity: string;
            source: string;
        };
        RunEngineDto: {
            id: string;
            serialNumber: string;
        };
        RunOnDto: {
            high: string | null;
            low: string | null;
            /** @enum {string} */
            rule: "add" | "none" | "one-third";
        };
        SameFileDto: {
            fileName: string;
            id: string;
        };
        ServiceabilityDto: {
            /** @description Nothing among these is held against fitting it. */
            fit: boolean;
            openVisit: components["schemas"]["OpenVisitDto"] | null;
            preservations: components["schemas"]["PreservationDto"][];
            reasons: components["schemas"]["UnfitReasonDto"][];
            tags: components["schemas"]["TagDto"][];
        };
        SessionDto: {
            /** @description Sent back as x-csrf-token with every change. */
            csrfToken: string;
            /** @description Whether a PIN is chosen that signs at a tablet. */
            hasPin: boolean;
            /** @description True until a password set by someone else was changed; until then nothing else is open. */
            mustChangePassword: boolean;
            operator: components["schemas"]["SessionOperatorDto"];
            person: components["schemas"]["SessionPersonDto"];
        };
        SessionOperatorDto: {
            code: string;
            name: string;
        };
        SessionPersonDto: {
            fullName: string;
            id: string;
            licence: string | null;
            roles: string[];
            signInName: string;
        };
        SheetLimitDto: {
            /** @enum {string} */
            authorisation: "limited" | "not-authorised" | "not-limited";
            calendar: components["schemas"]["CalendarLifeDto"][];
            cycles: number | null;
            minutes: number | null;
            /** @description Null: at any rating. */
            ratingCode: string | null;
        };
        SheetPartDto: {
            componentId: string | null;
            description: string;
            /** @description Reasons, acceptances and gaps, in words. */
            flags: string[];
            life: components["schemas"]["LifeDto"] | null;
            limits: components["schemas"]["SheetLimitDto"][];
            /** @description What it is in. */
            module: string;
            partNumber: string;
            place: string;
            serialNumber: string;
            sinceNew: components["schemas"]["CountersDto"];
            /**
             * @description Whether all it rests on is on record, or a worst case stands for some of it, or something is missing.
             * @enum {string}
             */
            trace: "not-verified" | "verified" | "worst-case";
            usedAt: components["schemas"]["SheetUseDto"][];
        };
        SheetSubjectDto: {
            description: string;
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            /** @description Maker and designation. */
            model: string | null;
            partNumber: string;
            /** @description Where it is, in words. */
            place: string;
            ratingCode: string | null;
            serialNumber: string;
            sinceNew: components["schemas"]["CountersDto"];
        };
        SheetUseDto: {
            cycles: components["schemas"]["CyclesDto"] | null;
            minutes: number | null;
            /** @description Null: at a rating nobody knows, or where ratings do not matter. */
            ratingCode: string | null;
        };
        ShopAccomplishmentDto: {
            /** Format: uuid */
            componentId: string;
            /** @description What shows it; the shop's report, when left out. */
            evidence?: string | null;
            /** Format: uuid */
            requirementId: string;
        };
        ShopChangeDto: {
            at: string;
            certificate: string | null;
            disposition: string | null;
            dispositionText: string | null;
            id: string;
            incoming: components["schemas"]["VisitingComponentDto"] | null;
            outgoing: components["schemas"]["VisitingComponentDto"] | null;
            parentSerial: string;
            reason: string;
            removedTo: string | null;
            slotId: string;
            slotName: string;
        };
        ShopPreservationDto: {
            document: string;
            /** @description The last day it holds. */
            goodUntil: string;
            method: string;
        };
        ShopResetDto: {
            /** Format: uuid */
            componentId: string;
            /** @description What shows it; the shop's report, when left out. */
            evidence?: string | null;
            /** @enum {string} */
            kind: "overhaul" | "repair" | "shop-visit";
        };
        ShopReturnDto: {
            /** @description The build standard as it was kept then. */
            build: components["schemas"]["BuildStandardDto"];
            certificate: string | null;
            changes: components["schemas"]["ShopChangeDto"][];
            id: string;
            location: string;
            /** @description What broke a rule and was recorded with it. */
            objections: components["schemas"]["ObjectionDto"][];
            recordedAt: string;
            recordedBy: string | null;
            report: string;
            resets: components["schemas"]["VisitResetDto"][];
            returnedAt: string;
            workDone: string;
        };
        ShopTagDto: {
            reason: string;
            /** @enum {string} */
            status: "quarantine" | "serviceable" | "unserviceable";
            tagNumber: string;
        };
        ShopVisitDto: {
            /** @description The build standard as it was kept at dispatch. */
            build: components["schemas"]["BuildStandardDto"];
            component: components["schemas"]["VisitingComponentDto"];
            difference: components["schemas"]["BuildDifferenceDto"] | null;
            id: string;
            orderReference: string;
            recordedAt: string;
            recordedBy: string | null;
            returned: components["schemas"]["ShopReturnDto"] | null;
            sentAt: string;
            shop: string;
            /** @enum {string} */
            status: "in-shop" | "returned" | "voided";
            voidReason: string | null;
            workscope: string;
        };
        ShopVisitRowDto: {
            certificate: string | null;
            component: components["schemas"]["VisitingComponentDto"];
            id: string;
            orderReference: string;
            /** @description The report and the certificate it was returned with. */
            report: string | null;
            returnedAt: string | null;
            sentAt: string;
            shop: string;
            /** @enum {string} */
            status: "in-shop" | "returned" | "voided";
            workscope: string;
        };
        ShopVisitsPageDto: {
            next: string | null;
            rows: components["schemas"]["ShopVisitRowDto"][];
        };
        ShownSignatureDto: {
            /** @description The content that was signed. */
            contentHash: string;
            /** @description Whether it still holds for the step as it is now. */
            counts: boolean;
            /** @description For an inspection: the signature of the work it looked at. */
            coversId: string | null;
            id: string;
            licence: string | null;
            /** @enum {string} */
            meaning: "done" | "inspection";
            method: string;
            performedAt: string;
            personId: string;
            personName: string;
            /** @description Why one person looked again at their own work. */
            reinspectionReason: string | null;
            signedAt: string;
            undone: boolean;
            undoneReason: string | null;
        };
        SignInDto: {
            /** @description The operator's code; needed only where several are served. */
            operatorCode?: string;
            password: string;
            signInName: string;
        };
        SignReleaseDto: {
            /** @description The digest of the check that was seen. */
            digest: string;
            /** @description The signer's own password, again; left out when the PIN is given. */
            password?: string;
            /** @description The signer's own PIN, in place of the password. */
            pin?: string;
        };
        SignStepDto: {
            /** @description What the counter of an auxiliary power unit showed that this step moves; asked of no other. */
            counterReading?: components["schemas"]["CounterFiguresDto"];
            /** @description The digest of the words that were seen. */
            digest: string;
            /** @enum {string} */
            meaning: "done" | "inspection";
            /** @enum {string} */
            method: "password" | "pin";
            /** @description When it was done or looked at, whole minutes of UTC. */
            performedAt: string;
            /** @description Why one person inspects their own work, where the rule set allows it. */
            reinspectionReason?: string;
            /** @description The signer's own password or PIN. */
            secret: string;
            /** @description The signer's sign-in name, when it is another person at the same tablet. */
            signInName?: string;
        };
        SlotDifferenceDto: {
            after: components["schemas"]["BuiltComponentDto"] | null;
            before: components["schemas"]["BuiltComponentDto"] | null;
            name: string;
            parentSerial: string;
            slotId: string;
        };
        SlotDto: {
            component: components["schemas"]["PartDto"] | null;
            id: string;
            /** @enum {string} */
            kind: "module" | "part";
            lifeLimited: boolean;
            name: string;
        };
        SoonestPartDto: {
            /** @description What it rests on. */
            basis: string;
            componentId: string;
            description: string;
            /** @description The worst case stands for something unknown, under a recorded acceptance. */
            flagged: boolean;
            /** @description The last day it is good through. */
            goodThrough: string | null;
            /** @description The day; a forecast where use drives it, never a limit. Null when it is past, or too far off. */
            projectedOn: string | null;
            /** @description Why nothing can be counted on; null when it can. */
            reason: string | null;
            /** @description Whole cycles left; below zero they are past; null when no cycles limit it or they can't be told. */
            remainingCycles: number | null;
            /** @description Days until the last it is good through; below zero they are past. */
            remainingDays: number | null;
            /** @description Whole minutes left. */
            remainingMinutes: number | null;
            serialNumber: string;
        };
        SpareDto: {
            componentId: string;
            description: string;
            engineModel: string | null;
            engineModelId: string | null;
            fit: boolean;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            left: components["schemas"]["SpareLeftDto"];
            lessor: string | null;
            /** @description The name of its location; null where none is recorded. */
            location: string | null;
            locationKind: string | null;
            nextRequirement: components["schemas"]["SpareRequirementDto"] | null;
            /** @description The visit it was not returned from. */
            openVisitId: string | null;
            owner: string;
            partNumber: string;
            preservation: components["schemas"]["SparePreservationDto"] | null;
            ratingCode: string | null;
            reasons: components["schemas"]["SpareReasonDto"][];
            serialNumber: string;
            since: string | null;
            tag: components["schemas"]["SpareTagDto"] | null;
        };
        SpareLeftDto: {
            /** @description Whole cycles; null where nothing in it is limited in cycles. */
            cycles: number | null;
            cyclesPart: string | null;
            /** @description The last day the tightest calendar life is good through. */
            goodThrough: string | null;
            minutes: number | null;
            minutesPart: string | null;
            /** @description Something in it is told only at the rating of the engine it goes into. */
            ratingOpen: boolean;
        };
        SparePreservationDto: {
            goodUntil: string;
            over: boolean;
        };
        SpareReasonDto: {
            /** @enum {string} */
            code: "at-limit" | "at-shop" | "in-quarantine-store" | "in-shop" | "not-authorised" | "not-verified" | "nowhere" | "over-limit" | "quarantine" | "unserviceable";
            text: string;
        };
        SpareRequirementDto: {
            code: string;
            dimension: string;
            dueOn: string | null;
            /** @description Minutes or cycles left; null where it falls due by a day, or is not verified. */
            remaining: number | null;
            requirementId: string;
            title: string;
            verified: boolean;
        };
        SparesPageDto: {
            next: string | null;
            rows: components["schemas"]["SpareDto"][];
            /** @description How many there are in all, as asked. */
            total: number;
        };
        SpareTagDto: {
            /** @enum {string} */
            status: "quarantine" | "serviceable" | "unserviceable";
            tagNumber: string;
        };
        StatementDto: {
            blockers: components["schemas"]["BlockerDto"][];
            /** @description Hash of the step's content as it stands. */
            contentHash: string;
            /** @description SHA-256 of words, content, meaning and moment; sent back at signing. */
            digest: string;
            missing: components["schemas"]["MissingDto"][];
            /** @description Lines parted by line feeds. */
            statement: string;
        };
        StayDto: {
            endReason: string | null;
            from: string;
            /** @enum {string} */
            fromPrecision: "day" | "minute" | "page";
            /** @description What was typed where the beginning is no instant: a log page or a date. */
            fromText: string | null;
            id: string;
            /** @enum {string} */
            kind: "location" | "slot";
            label: string;
            locationId: string | null;
            reason: string | null;
            slotId: string | null;
            to: string | null;
            /** @enum {string|null} */
            toPrecision: "day" | "minute" | "page" | null;
            toText: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        StepCountsDto: {
            signed: number;
            total: number;
        };
        StepDefinitionDto: {
            captures: (components["schemas"]["TorqueCaptureDto"] | components["schemas"]["CountCaptureDto"] | components["schemas"]["ComponentOffCaptureDto"] | components["schemas"]["ComponentOnCaptureDto"] | components["schemas"]["PapersCaptureDto"] | components["schemas"]["LeakCheckCaptureDto"] | components["schemas"]["ReadingsCaptureDto"] | components["schemas"]["TextCaptureDto"] | components["schemas"]["CheckCaptureDto"] | components["schemas"]["PhotoCaptureDto"])[];
            /** @description Shown before the action. */
            cautions: string[];
            /** @description Keys of things it closes or joins. */
            closes: string[];
            /** @description The key of its group. */
            group: string;
            /** @enum {string} */
            inspection: "independent" | "none";
            key: string;
            /**
             * @description Signing it moves the component of the order.
             * @enum {string|null}
             */
            moves: "installation" | "removal" | null;
            /** @description Its place in the order, from 1. */
            number: number;
            /** @description Keys of things it opens or parts. */
            opens: string[];
            source: components["schemas"]["StepSourceDto"] | null;
            text: string | null;
            /** @description One action, verb first. */
            title: string;
            /** @description Keys of steps that come before. */
            waitsFor: string[];
        };
        StepDto: {
            blockers: components["schemas"]["BlockerDto"][];
            /** @description SHA-256 of its content, which a signature is given on. */
            contentHash: string;
            definition: components["schemas"]["StepDefinitionDto"];
            entries: components["schemas"]["StepEntryDto"][];
            id: string;
            missing: components["schemas"]["MissingDto"][];
            packageId: string;
            signatures: components["schemas"]["ShownSignatureDto"][];
            /** @enum {string} */
            standing: "blocked" | "changed" | "open" | "rejected" | "signed" | "to-inspect";
            version: number;
        };
        StepEntryDto: {
            /** @description Key of the capture. */
            capture: string;
            /** @description What the register knows as the serial typed. */
            componentId: string | null;
            enteredAt: string;
            id: string;
            judgement: components["schemas"]["JudgementDto"];
            kind: string;
            personId: string;
            personName: string;
            photoId: string | null;
            /** @description The fastener of a torque. */
            point: string | null;
            /** @description Serial number of the tool. */
            tool: string | null;
            toolId: string | null;
            typed: components["schemas"]["TorqueTypedDto"] | components["schemas"]["CountTypedDto"] | components["schemas"]["ComponentOffTypedDto"] | components["schemas"]["ComponentOnTypedDto"] | components["schemas"]["PapersTypedDto"] | components["schemas"]["LeakCheckTypedDto"] | components["schemas"]["ReadingsTypedDto"] | components["schemas"]["TextTypedDto"] | components["schemas"]["CheckTypedDto"] | components["schemas"]["PhotoTypedDto"];
            voided: boolean;
            voidReason: string | null;
        };
        StepGroupDto: {
            key: string;
            /**
             * @description Which side of a change it belongs to.
             * @enum {string}
             */
            lane: "both" | "in" | "out";
            letter: string;
            /**
             * @description Where on the powerplant it is.
             * @enum {string}
             */
            place: "aft-mount" | "cockpit" | "core-left" | "core-right" | "exhaust" | "fan-cowls" | "forward-mount" | "gearbox" | "ground" | "inlet" | "reverser" | "stand" | "strut";
            title: string;
        };
        StepSourceDto: {
            document: string;
            revision: string;
        };
        StruckDto: {
            by: string;
            reason: string;
            recordedAt: string;
        };
        TagDto: {
            at: string;
            certificate: string | null;
            componentId: string;
            /** @description Whether it is the one that counts now. */
            counts: boolean;
            id: string;
            issuedBy: string;
            reason: string;
            /** @enum {string} */
            status: "quarantine" | "serviceable" | "unserviceable";
            tagNumber: string;
            voided: boolean;
            voidReason: string | null;
        };
        TestCellDto: {
            /** @description The engine in it now. */
            engine: components["schemas"]["RunEngineDto"] | null;
            id: string;
            name: string;
            /** @description Where an engine is placed to be run. */
            slotId: string;
        };
        TextCaptureDto: {
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "text";
            label: string;
            required: boolean;
        };
        TextTypedDto: {
            /** @enum {string} */
            kind: "text";
            text: string;
        };
        TierDto: {
            /** @description Minutes, cycles, days or calendar months, as the dimension counts. */
            atMost?: number | null;
            /** @description Of months alone: days at most. */
            atMostDays?: number | null;
            /** @description Whole hundredths of the interval. */
            percent?: number | null;
            /** @description The longest interval it is for; left out, any. */
            upTo?: number | null;
        };
        TightestDifferenceDto: {
            after: number | null;
            before: number | null;
        };
        TightestPartDto: {
            componentId: string;
            description: string;
            /** @description The worst case stands for something unknown, under a recorded acceptance. */
            flagged: boolean;
            /** @description The last day it is good through. */
            goodThrough: string | null;
            /** @description Why nothing can be counted on; null when it can. */
            reason: string | null;
            /** @description Whole cycles left; below zero they are past; null when no cycles limit it or they can't be told. */
            remainingCycles: number | null;
            /** @description Days until the last it is good through; below zero they are past. */
            remainingDays: number | null;
            /** @description Whole minutes left. */
            remainingMinutes: number | null;
            serialNumber: string;
        };
        ToldMomentDto: {
            at: string;
            /** @enum {string} */
            kind: "after-last" | "after-page" | "before-first" | "instant";
            /** @enum {string} */
            precision: "day" | "minute" | "page";
            /** @description The log page or the day that was typed; null for an instant. */
            text: string | null;
        };
        ToolDto: {
            /** @description Of the calibration that governs; null when there is none. */
            calibratedOn: string | null;
            certificate: string | null;
            description: string;
            /** @description Percent. */
            deviation: string | null;
            /** @description The last day it is good for. */
            dueOn: string | null;
            id: string;
            /** @enum {string} */
            kind: "gauge" | "other" | "torque-wrench";
            rangeHigh: string | null;
            rangeLow: string | null;
            serialNumber: string;
            /**
             * @description By the newest calibration, today in UTC; due soon within thirty days.
             * @enum {string}
             */
            status: "in-date" | "never" | "out-of-date" | "soon";
            unit: string | null;
            version: number;
        };
        ToolUseDto: {
            enteredAt: string;
            entryId: string;
            /** @description What was captured: 'Forward mount bolts'. */
            label: string;
            packageId: string;
            packageNumber: string;
            packageTitle: string;
            personName: string;
            /** @description The point of a group that was read; null where there are no points. */
            point: string | null;
            stepNumber: number;
            stepTitle: string;
            /** @description What was typed, with its unit. */
            typed: string;
            /** @enum {string} */
            verdict: "accepted" | "rejected";
            voided: boolean;
        };
        ToolViewDto: {
            /** @description Of the calibration that governs; null when there is none. */
            calibratedOn: string | null;
            calibrations: components["schemas"]["CalibrationDto"][];
            certificate: string | null;
            description: string;
            /** @description Percent. */
            deviation: string | null;
            /** @description The last day it is good for. */
            dueOn: string | null;
            id: string;
            /** @enum {string} */
            kind: "gauge" | "other" | "torque-wrench";
            rangeHigh: string | null;
            rangeLow: string | null;
            serialNumber: string;
            /**
             * @description By the newest calibration, today in UTC; due soon within thirty days.
             * @enum {string}
             */
            status: "in-date" | "never" | "out-of-date" | "soon";
            unit: string | null;
            /** @description The newest two hundred. */
            uses: components["schemas"]["ToolUseDto"][];
            /** @description How many uses there are in all. */
            usesInAll: number;
            version: number;
        };
        TorqueCaptureDto: {
            /**
             * @description What acceptance is judged on.
             * @enum {string}
             */
            binds: "range" | "window";
            high: string;
            /** @description Unique in its step. */
            key: string;
            /** @enum {string} */
            kind: "torque";
            label: string;
            /** @description The approved range at the fastener, bounds included. */
            low: string;
            /** @description The fasteners in the order they are torqued. */
            points: string[];
            runOn: components["schemas"]["RunOnDto"];
            /** @enum {string} */
            thread: "dry" | "lubricated";
            /** @enum {string} */
            unit: "N·m" | "kgf·m" | "lbf·ft" | "lbf·in";
        };
        TorqueTypedDto: {
            extension: components["schemas"]["ExtensionTypedDto"] | null;
            indication: string;
            /** @enum {string} */
            kind: "torque";
            /** @enum {string} */
            method: "reading" | "set-value";
            /** @description The fastener. */
            point: string;
            /** @description Run-on torque in the same unit; null where none was measured. */
            runOn: string | null;
            /** @enum {string} */
            unit: "N·m" | "kgf·m" | "lbf·ft" | "lbf·in";
        };
        TraceGapDto: {
            componentId: string;
            from: string;
            /** @enum {string} */
            fromPrecision: "day" | "minute" | "page";
            /** @description What was typed where the beginning is no instant: a log page or a date. */
            fromText: string | null;
            id: string;
            note: string;
            to: string;
            /** @enum {string} */
            toPrecision: "day" | "minute" | "page";
            toText: string | null;
            voided: boolean;
            voidReason: string | null;
        };
        TrialBalanceDto: {
            asOf: string;
            /** @description True when every difference is zero. */
            balanced: boolean;
            cells: components["schemas"]["CellBalanceDto"][];
            counters: components["schemas"]["CounterBalanceDto"][];
            rows: components["schemas"]["BalanceRowDto"][];
        };
        TypePositionDto: {
            /** @enum {string} */
            kind: "apu" | "engine";
            label: string;
            /** @enum {string} */
            mount: "left-wing" | "right-wing" | "tail";
            /** @description From the left outboard, beginning at 1; the auxiliary power unit's is 0. */
            number: number;
        };
        UndoneSignatureDto: {
            id: string;
            packageId: string;
            reason: string;
            stepId: string;
            undoneBy: string;
            /** @description The step's version after it. */
            version: number;
        };
        UndoSignatureDto: {
            /** @enum {string} */
            method: "password" | "pin";
            /** @description Why it does not hold. */
            reason: string;
            /** @description The signer's own password or PIN. */
            secret: string;
            /** @description The signer's sign-in name, when it is another person at the same tablet. */
            signInName?: string;
        };
        UnfitReasonDto: {
            /** @enum {string} */
            code: "in-quarantine-store" | "in-shop" | "quarantine" | "unserviceable";
            text: string;
        };
        VariationDto: {
            /** @description The due it is for is the one after this accomplishment; null: the first. */
            accomplishmentId: string | null;
            airframeId: string | null;
            approvedBy: string;
            componentId: string | null;
            cycles: number | null;
            /** @description Days past the day it was due on. */
            days: number | null;
            id: string;
            minutes: number | null;
            on: string;
            positionId: string | null;
            reason: string;
            reference: string;
            requirementId: string;
            /** @description What it is for, in words. */
            subject: string;
            voided: boolean;
            voidReason: string | null;
        };
        VariationStatusDto: {
            approvedBy: string;
            cycles: number | null;
            /** @description Days past the day it is due on. */
            days: number | null;
            id: string;
            minutes: number | null;
            on: string;
            reference: string;
        };
        VisitingComponentDto: {
            description: string;
            engineModelId: string | null;
            id: string;
            /** @enum {string} */
            kind: "apu" | "engine" | "module" | "part" | "pod";
            partNumber: string;
            serialNumber: string;
        };
        VisitResetDto: {
            componentId: string;
            evidence: string;
            id: string;
            /** @enum {string} */
            kind: "overhaul" | "repair" | "shop-visit";
            serialNumber: string;
        };
        VoidAuthorisationDto: {
            reason: string;
        };
        VoidCalibrationDto: {
            reason: string;
        };
        VoidedFactDto: {
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            id: string;
            voided: boolean;
            voidReason: string | null;
        };
        VoidedStayDto: {
            componentId: string;
            consequences: components["schemas"]["ConsequencesDto"];
            id: string;
        };
        VoidEntryDto: {
            reason: string;
        };
        VoidFactDto: {
            reason: string;
        };
        VoidFlightDto: {
            reason: string;
        };
        VoidGapNoteDto: {
            reason: string;
        };
        VoidKeepingDto: {
            reason: string;
        };
        VoidLifeLimitDto: {
            reason: string;
        };
        VoidPlanDto: {
            reason: string;
        };
        VoidReadingDto: {
            reason: string;
        };
        VoidReasonDto: {
            reason: string;
        };
        VoidRequirementDto: {
            reason: string;
        };
        VoidRuleDto: {
            reason: string;
        };
        VoidRunDto: {
            reason: string;
        };
        VoidShopFactDto: {
            reason: string;
        };
        WaitingPackageDto: {
            id: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            number: string;
            steps: components["schemas"]["WaitingStepDto"][];
            title: string;
        };
        WaitingStepDto: {
            id: string;
            number: number;
            title: string;
            /** @enum {string} */
            why: "rejected" | "to-do" | "to-inspect";
        };
        WindowDto: {
            early?: components["schemas"]["GrantsDto"] | null;
            late?: components["schemas"]["GrantsDto"] | null;
        };
        WithdrawPackageDto: {
            reason: string;
        };
        WorkAirframeDto: {
            id: string;
            registration: string;
        };
        WorkComponentDto: {
            description: string;
            id: string;
            kind: string;
            partNumber: string;
            serialNumber: string;
        };
        WorkDto: {
            counts: components["schemas"]["CountAccountDto"][];
            groups: components["schemas"]["StepGroupDto"][];
            items: components["schemas"]["AccountableItemDto"][];
            openItems: components["schemas"]["OpenItemDto"][];
            order: components["schemas"]["OrderDto"] | null;
            package: components["schemas"]["WorkPackageDto"];
            steps: components["schemas"]["StepDto"][];
        };
        WorkPackageDto: {
            airframe: components["schemas"]["WorkAirframeDto"] | null;
            component: components["schemas"]["WorkComponentDto"] | null;
            id: string;
            /** @enum {string} */
            kind: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            number: string;
            openedAt: string;
            /** @description The revision of the procedure its steps were made from. */
            procedure: components["schemas"]["WorkProcedureDto"] | null;
            reference: string | null;
            /** @description The code of the rule set it is released under. */
            ruleSet: string;
            /** @enum {string} */
            status: "open" | "released" | "withdrawn";
            title: string;
            version: number;
        };
        WorkProcedureDto: {
            code: string;
            document: string;
            documentRevision: string;
            id: string;
            revision: string;
            title: string;
        };
    };
    responses: {
        /** @description The request was refused or failed, and nothing was changed. */
        Problem: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["ProblemDto"];
            };
        };
    };
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    accomplishmentsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAccomplishmentDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AccomplishmentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    accomplishmentsCorrect: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CorrectedAccomplishmentDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AccomplishmentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    accomplishmentsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRequirementDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AccomplishmentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    airframeTypesList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeTypeDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    airframeTypesAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAirframeTypeDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeTypeDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    airframesList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    airframesAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAirframeDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    airframesGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    countersOfAirframe: {
        parameters: {
            query?: {
                /** @description After the last flight of this day. */
                afterLast?: string;
                /** @description Whose log or days are meant; the airframe it hangs on now, unless told. */
                airframeId?: string;
                /** @description As of this instant; now, where none of the four is told. */
                at?: string;
                /** @description Before the first flight of this day. */
                beforeFirst?: string;
                /** @description After the flight of this log page of `airframeId`. */
                page?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeCountersDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    flightsPage: {
        parameters: {
            query?: {
                /** @description Where the page before ended. */
                after?: string;
                /** @description Rows a page, at most 200; 50 unless told. */
                limit?: number;
                /** @description Whether voided flights are listed too. */
                voided?: "false" | "true";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlightsPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    flightsLog: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewFlightsDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlightsAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    groundRunsPage: {
        parameters: {
            query?: {
                /** @description What the page before gave as `next`. */
                after?: string;
                limit?: number;
                /** @description Whether voided runs are among them. */
                voided?: "false" | "true";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GroundRunsPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    groundRunsRecord: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewGroundRunDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GroundRunAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    historyOfAirframe: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HistoryDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    occurrencesList: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OccurrenceDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    openingsOfAirframe: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpeningDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    overrunsOfAirframe: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OverrunDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingPlanned: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedFlightsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingPlan: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPlannedFlightsDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlightsPlannedDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingPlannedRates: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedRateDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingPlanRate: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPlannedRateDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedRateDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    positionsOfAirframe: {
        parameters: {
            query?: {
                /** @description 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
                at?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PositionsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingReady: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AskedReadinessDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadinessDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    heldRequirementsOnAirframe: {
        parameters: {
            query?: {
                /** @description With all that does not apply, of another type, model or part number too. */
                notApplicable?: "false" | "true";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequirementStatusDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    assessmentsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAssessmentDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AssessmentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    assessmentsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRequirementDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AssessmentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    authorisationsList: {
        parameters: {
            query?: {
                personId?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuthorisationDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    authorisationsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAuthorisationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuthorisationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    authorisationsEnd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EndAuthorisationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuthorisationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    authorisationsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidAuthorisationDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuthorisationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    positionsBoard: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BoardRowDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    changesRecord: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ConfirmedChangeDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedChangeDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    changesPreview: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeRequestDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChangePreviewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentsPage: {
        parameters: {
            query?: {
                /** @description Where the page before ended. */
                after?: string;
                kind?: "apu" | "engine" | "module" | "part" | "pod";
                /** @description Rows a page, at most 200; 50 unless told. */
                limit?: number;
                /** @description Part of a serial number or part number; capitals and small letters are the same. */
                search?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentsPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewComponentDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentsGet: {
        parameters: {
            query?: {
                /** @description As of this instant; now, unless told. */
                at?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    counterReadingsList: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CounterReadingsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    counterReadingsRead: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewReadingDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CounterAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    counterReadingsReplace: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewReplacementDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CounterAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    countersOfComponent: {
        parameters: {
            query?: {
                /** @description After the last flight of this day. */
                afterLast?: string;
                /** @description Whose log or days are meant; the airframe it hangs on now, unless told. */
                airframeId?: string;
                /** @description As of this instant; now, where none of the four is told. */
                at?: string;
                /** @description Before the first flight of this day. */
                beforeFirst?: string;
                /** @description After the flight of this log page of `airframeId`. */
                page?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExplainedCountersDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsOf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComponentFactsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    historyOfComponent: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HistoryDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeStatusGet: {
        parameters: {
            query?: {
                /** @description 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
                at?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeSheetDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeStatusCsv: {
        parameters: {
            query?: {
                /** @description 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
                at?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The sheet. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    overrunsOfComponent: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OverrunDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentsPlaces: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StayDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    heldRequirementsOnComponent: {
        parameters: {
            query?: {
                /** @description With all that does not apply, of another type, model or part number too. */
                notApplicable?: "false" | "true";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequirementStatusDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    serviceabilityOf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServiceabilityDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    countersFlights: {
        parameters: {
            query: {
                /** @description Where the page before ended. */
                after?: string;
                /** @description The clock of the line. */
                carrierId: string;
                /** @description What landed after this instant. */
                from: string;
                /** @description Rows a page, at most 200; 50 unless told. */
                limit?: number;
                /** @description And up to this one; to now, unless told. */
                to?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlightsOfLinePageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    counterReadingsCorrect: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CorrectReadingDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CounterAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    counterReadingsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidReadingDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CounterAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    cycleRulesVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRuleDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleRevisionsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    documentsList: {
        parameters: {
            query: {
                subjectId: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DocumentDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    documentsBegin: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewDocumentDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DocumentBegunDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    documentsFile: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The file. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    dueListPage: {
        parameters: {
            query?: {
                /** @description The 'next' of the page before. */
                after?: string;
                /** @description Of one airframe, with all that hangs on it. */
                airframeId?: string;
                /** @description By what dates are projected: the average of the last days, the planned rate, or the flights planned. */
                basis?: "average" | "flights" | "rate";
                /** @description Of one engine, module or part, with all beneath it. */
                componentId?: string;
                /** @description How many days an average is of; 90 unless told. */
                days?: number;
                /** @description The order turned round. */
                direction?: "asc" | "desc";
                /** @description Of these kinds alone: life limits, unknown counters, or kinds of requirements. */
                kind?: ("airworthiness-limitation" | "bulletin" | "check" | "counters" | "directive" | "discard" | "inspection" | "life-limit" | "overhaul")[];
                /** @description How many rows; 50 unless told. */
                limit?: number;
                /** @description Part numbers that contain this. */
                partNumber?: string;
                /** @description Of one position, with all that hangs there. */
                positionId?: string;
                /** @description Serial and part numbers, descriptions, codes, titles, registrations and documents that contain this. */
                search?: string;
                /** @description By urgency unless told. */
                sort?: "code" | "projected" | "remaining" | "subject" | "urgency";
                /** @description Of these statuses alone. */
                status?: ("in-tolerance" | "later" | "not-verified" | "over" | "planned" | "soon")[];
                /** @description What has no more cycles left than these. */
                withinCycles?: number;
                /** @description What is due, or projected by the basis, in no more days than these. */
                withinDays?: number;
                /** @description What has no more hours left than these; with cycles or days, any of them is enough. */
                withinHours?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DuePageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    dueListCsv: {
        parameters: {
            query?: {
                /** @description Of one airframe, with all that hangs on it. */
                airframeId?: string;
                /** @description By what dates are projected: the average of the last days, the planned rate, or the flights planned. */
                basis?: "average" | "flights" | "rate";
                /** @description Of one engine, module or part, with all beneath it. */
                componentId?: string;
                /** @description How many days an average is of; 90 unless told. */
                days?: number;
                /** @description The order turned round. */
                direction?: "asc" | "desc";
                /** @description Of these kinds alone: life limits, unknown counters, or kinds of requirements. */
                kind?: ("airworthiness-limitation" | "bulletin" | "check" | "counters" | "directive" | "discard" | "inspection" | "life-limit" | "overhaul")[];
                /** @description Part numbers that contain this. */
                partNumber?: string;
                /** @description Of one position, with all that hangs there. */
                positionId?: string;
                /** @description Serial and part numbers, descriptions, codes, titles, registrations and documents that contain this. */
                search?: string;
                /** @description By urgency unless told. */
                sort?: "code" | "projected" | "remaining" | "subject" | "urgency";
                /** @description Of these statuses alone. */
                status?: ("in-tolerance" | "later" | "not-verified" | "over" | "planned" | "soon")[];
                /** @description What has no more cycles left than these. */
                withinCycles?: number;
                /** @description What is due, or projected by the basis, in no more days than these. */
                withinDays?: number;
                /** @description What has no more hours left than these; with cycles or days, any of them is enough. */
                withinHours?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The list. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    dueListLines: {
        parameters: {
            query?: {
                /** @description Of one airframe, with all that hangs on it. */
                airframeId?: string;
                /** @description By what dates are projected: the average of the last days, the planned rate, or the flights planned. */
                basis?: "average" | "flights" | "rate";
                /** @description Of one engine, module or part, with all beneath it. */
                componentId?: string;
                /** @description How many days an average is of; 90 unless told. */
                days?: number;
                /** @description The order turned round. */
                direction?: "asc" | "desc";
                /** @description Of these kinds alone: life limits, unknown counters, or kinds of requirements. */
                kind?: ("airworthiness-limitation" | "bulletin" | "check" | "counters" | "directive" | "discard" | "inspection" | "life-limit" | "overhaul")[];
                /** @description Part numbers that contain this. */
                partNumber?: string;
                /** @description Of one position, with all that hangs there. */
                positionId?: string;
                /** @description Serial and part numbers, descriptions, codes, titles, registrations and documents that contain this. */
                search?: string;
                /** @description By urgency unless told. */
                sort?: "code" | "projected" | "remaining" | "subject" | "urgency";
                /** @description Of these statuses alone. */
                status?: ("in-tolerance" | "later" | "not-verified" | "over" | "planned" | "soon")[];
                /** @description What has no more cycles left than these. */
                withinCycles?: number;
                /** @description What is due, or projected by the basis, in no more days than these. */
                withinDays?: number;
                /** @description What has no more hours left than these; with cycles or days, any of them is enough. */
                withinHours?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The list: a DueRowDto on each line. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": string;
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    dueListTotals: {
        parameters: {
            query?: {
                /** @description Of one airframe, with all that hangs on it. */
                airframeId?: string;
                /** @description By what dates are projected: the average of the last days, the planned rate, or the flights planned. */
                basis?: "average" | "flights" | "rate";
                /** @description Of one engine, module or part, with all beneath it. */
                componentId?: string;
                /** @description How many days an average is of; 90 unless told. */
                days?: number;
                /** @description Of these kinds alone: life limits, unknown counters, or kinds of requirements. */
                kind?: ("airworthiness-limitation" | "bulletin" | "check" | "counters" | "directive" | "discard" | "inspection" | "life-limit" | "overhaul")[];
                /** @description Part numbers that contain this. */
                partNumber?: string;
                /** @description Of one position, with all that hangs there. */
                positionId?: string;
                /** @description Serial and part numbers, descriptions, codes, titles, registrations and documents that contain this. */
                search?: string;
                /** @description Of these statuses alone. */
                status?: ("in-tolerance" | "later" | "not-verified" | "over" | "planned" | "soon")[];
                /** @description What has no more cycles left than these. */
                withinCycles?: number;
                /** @description What is due, or projected by the basis, in no more days than these. */
                withinDays?: number;
                /** @description What has no more hours left than these; with cycles or days, any of them is enough. */
                withinHours?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DueTotalsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    engineModelsList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EngineModelDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    engineModelsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewEngineModelDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EngineModelDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    cycleRulesList: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleRevisionsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    cycleRulesAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewRuleRevisionDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleRevisionsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    flightsCorrect: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CorrectFlightDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlightsAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    gapNotesAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewGapNoteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GapNoteDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    flightsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidFlightDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlightsAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsAcceptGap: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewGapAcceptanceDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedGapAcceptanceDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsVoidAcceptance: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VoidedFactDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    gapNotesVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidGapNoteDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GapNoteDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    groundRunsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRunDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GroundRunAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    importsPage: {
        parameters: {
            query?: {
                /** @description The id the page before ended with. */
                after?: string;
                /** @description Rows a page, at most 200; 50 unless told. */
                limit?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportsPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    importsTake: {
        parameters: {
            query?: {
                fileName?: string;
                kind?: "flights";
            };
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewImportDto"];
                "text/csv": components["schemas"]["NewImportDto"];
            };
        };
        responses: {
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportBegunDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    importsGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    importsApply: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
                /** @description The etag of the version that was seen. Refused when missing (428) or no longer the present one (412). */
                "if-match"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportBegunDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    importsCancel: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    importsErrors: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    jobsGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JobDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    jobsCancel: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JobDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    journalPage: {
        parameters: {
            query?: {
                /** @description The 'next' of the page before: the number of its last entry. */
                after?: number;
                /** @description How many; 100 unless told. */
                limit?: number;
                /** @description An airframe, component, package, flight, person …; left out, all. */
                subject?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JournalPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeLimitsList: {
        parameters: {
            query?: {
                engineModelId?: string;
                partNumber?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeLimitDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeLimitsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewLifeLimitDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeLimitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeLimitsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidLifeLimitDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LifeLimitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeLimitsAccept: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AcceptLimitsDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AcceptedLimitsDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    lifeLimitsPreview: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LimitRevisionDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LimitPreviewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    locationsList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LocationDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    locationsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewLocationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LocationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsMineNow: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MyWorkDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    occurrencesAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOccurrenceDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OccurrenceDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    occurrencesVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRequirementDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OccurrenceDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    openingsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewOpeningDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedOpeningDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    openingsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedOpeningDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    packagesPage: {
        parameters: {
            query?: {
                /** @description The 'next' of the page before. */
                after?: string;
                airframeId?: string;
                /** @description Packages of this component itself. */
                componentId?: string;
                kind?: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
                /** @description How many; 50 unless told. */
                limit?: number;
                status?: "open" | "released" | "withdrawn";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PackagesPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    packagesOpen: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPackageDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PackageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    packagesGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PackageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    ordersAmend: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
                /** @description The etag of the version that was seen. Refused when missing (428) or no longer the present one (412). */
                "if-match"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AmendOrderDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendedOrderDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    releaseSign: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
                /** @description The etag of the version that was seen. Refused when missing (428) or no longer the present one (412). */
                "if-match"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignReleaseDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReleaseNoteDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    releaseCheck: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReleaseCheckDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsList: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StepDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    packagesWithdraw: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WithdrawPackageDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PackageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    peopleList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PeopleDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    peopleAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPersonDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    peopleDisable: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
                /** @description The etag of the version that was seen. Refused when missing (428) or no longer the present one (412). */
                "if-match"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    placementsPlace: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlacementDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlacedStayDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    placementsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                stayId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidReasonDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VoidedStayDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingVoidFlight: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidPlanDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedFlightDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    plannedFlyingVoidRate: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidPlanDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedRateDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    serviceabilityPreserve: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPreservationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PreservationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    serviceabilityVoidPreservation: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidKeepingDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PreservationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    proceduresList: {
        parameters: {
            query?: {
                kind?: "component-change" | "directive" | "engine-change" | "inspection" | "pod-swap";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProcedureRowDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    proceduresAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewProcedureDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProcedureDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    proceduresGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProcedureDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsChangeRating: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewRatingChangeDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedRatingChangeDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsVoidRating: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VoidedFactDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    releaseGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReleaseNoteDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    requirementsList: {
        parameters: {
            query?: {
                /** @description Those in force alone: the newest revision of each code that is not voided. */
                inForce?: "false" | "true";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequirementDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    requirementsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewRequirementDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequirementDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    requirementsGet: {
        parameters: {
            query?: {
                /** @description With all that does not apply, of another type, model or part number too. */
                notApplicable?: "false" | "true";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequirementViewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    requirementsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRequirementDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequirementDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsAddReset: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewResetDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedResetDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsVoidReset: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VoidedFactDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    ruleSetsList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleSetDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    serviceabilityTag: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewTagDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TagDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    serviceabilityVoidTag: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidKeepingDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TagDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    sessionShow: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SessionDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    sessionBegin: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignInDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SessionDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    sessionEnd: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            default: components["responses"]["Problem"];
        };
    };
    sessionChangePassword: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePasswordDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SessionDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    sessionChoosePin: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChoosePinDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SessionDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    shopVisitsPage: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                componentId?: string;
                limit?: number;
                status?: "in-shop" | "returned";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopVisitsPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    shopVisitsSend: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewShopVisitDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopVisitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    shopVisitsGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopVisitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    shopVisitsReturn: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewShopReturnDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopVisitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    shopVisitsVoidReturn: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidShopFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopVisitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    shopVisitsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidShopFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopVisitDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    sparesPage: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                engineModelId?: string;
                /** @description Fit to install alone, or those that are not alone. */
                fit?: boolean;
                kind?: "apu" | "engine" | "module" | "part" | "pod";
                limit?: number;
                locationId?: string;
                /** @description An owner or a lessor, whole. */
                owner?: string;
                /** @description A part number, whole. */
                partNumber?: string;
                /** @description Part of a serial number, a part number or a description. */
                search?: string;
                /** @description A slot: those alone that would fit there by kind, model and part number. */
                slotId?: string;
                sort?: "cycles" | "hours" | "preservation" | "serial" | "since";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SparesPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidEntryDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StepDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsPhoto: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": string;
                    "image/png": string;
                    "image/webp": string;
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    signingUndo: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["UndoSignatureDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UndoneSignatureDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsRecord: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewEntryDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StepDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    workStepsRecordPhoto: {
        parameters: {
            query: {
                /** @description Key of the capture. */
                capture: string;
                fileName: string;
            };
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": string;
                "image/png": string;
                "image/webp": string;
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StepDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    signingSign: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GivenSignatureDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    signingStatement: {
        parameters: {
            query: {
                /** @description That it was done, or that another person looked at it. */
                meaning: "done" | "inspection";
                /** @description When it was done or looked at, UTC. */
                performedAt: string;
                /** @description Why one person inspects their own work; it is part of the words. */
                reinspectionReason?: string;
                /** @description Who will sign, when it is another person at the same tablet. */
                signInName?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StatementDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    testCellsList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TestCellDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    testCellsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewTestCellDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TestCellDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    testCellsPage: {
        parameters: {
            query?: {
                /** @description What the page before gave as `next`. */
                after?: string;
                limit?: number;
                /** @description Whether voided runs are among them. */
                voided?: "false" | "true";
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GroundRunsPageDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    testCellsRecord: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewCellRunDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GroundRunAnswerDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    toolsVoidCalibration: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidCalibrationDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToolViewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    toolsList: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToolDto"][];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    toolsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewToolDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToolViewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    toolsGet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToolViewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    toolsCalibrate: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewCalibrationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToolViewDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsAddGap: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewTraceGapDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedTraceGapDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    componentFactsVoidGap: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidFactDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VoidedFactDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    trialBalanceGet: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrialBalanceDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    trialBalanceOfAirframe: {
        parameters: {
            query?: {
                /** @description 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
                upTo?: string;
            };
            header?: never;
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AirframeBalanceDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    variationsAdd: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewVariationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VariationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    variationsVoid: {
        parameters: {
            query?: never;
            header?: {
                /** @description A key for this act, new for each act and the same when it is repeated. Refused (400) when missing. */
                "idempotency-key"?: string;
            };
            path: {
                id: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["VoidRequirementDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VariationDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    healthLive: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HealthDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
    healthReady: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HealthDto"];
                };
            };
            default: components["responses"]["Problem"];
        };
    };
}
