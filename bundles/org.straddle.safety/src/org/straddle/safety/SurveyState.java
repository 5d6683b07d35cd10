package org.straddle.safety;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

import org.straddle.model.Survey;
import org.straddle.outlook.PolicyFigures;

/** Whether the newest survey of a site can be relied on on a day. */
public enum SurveyState {
    /** Nobody surveyed the site. */
    MISSING,
    /** It says itself until when it holds, and that is over. */
    EXPIRED,
    /** Nobody wrote down when it was. */
    UNDATED,
    /** It does not say until when it holds, and is older than the event's policy allows: roads, fences and woods change. */
    OLD,
    HOLDS;

    static SurveyState of(Optional<Survey> newest, LocalDate day, PolicyFigures policies) {
        if (newest.isEmpty()) {
            return MISSING;
        }
        Survey survey = newest.get();
        if (survey.getExpires() != null && survey.getExpires().isBefore(day)) {
            return EXPIRED;
        } else if (survey.getDate() == null) {
            return UNDATED;
        }
        return survey.getExpires() == null && ChronoUnit.DAYS.between(survey.getDate(), day) > policies.surveyAgeLimitDays()
                ? OLD : HOLDS;
    }
}
