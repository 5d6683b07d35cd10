package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.state;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReviewStateTest {

    /** The usual policy grants 60 days: a review of 1 June holds until 31 July. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # nobody, or nobody yet
            ''                                                        | 06-20 | missing
            visit 06-01                                              | 06-20 | missing
            review 06-21 by A                                         | 06-20 | missing
            # the policy's last day, and the review's own
            review 06-01 by A                                         | 06-01 | valid until 07-31 by A
            review 06-01 by A                                         | 07-31 | valid until 07-31 by A
            review 06-01 by A                                         | 08-01 | expired since 08-01
            review 06-01 by A until 06-19                             | 06-19 | valid until 06-19 by A
            review 06-01 by A until 06-19                             | 06-20 | expired since 06-20
            review 06-01 by A if dry                                  | 06-20 | valid on conditions until 07-31 by A
            # one signature is not enough, and expiry is told first
            review 06-01 by A alone                                   | 06-20 | signed once
            review 06-01 by Zoe                                       | 06-20 | signed once
            review 06-01 by A; review 06-10 by B alone                | 06-20 | signed once
            review 06-01 by A alone until 06-02                       | 06-20 | expired since 06-03
            # the newest decides, in whatever order the file has them
            review 06-01 by A; review 06-10 by B                      | 06-20 | valid until 08-09 by B
            review 06-10 by B; review 06-01 by A                      | 06-20 | valid until 08-09 by B
            review 06-10 by A; review 06-10 by B                      | 06-20 | valid until 08-09 by B
            review 06-01 by A; review 06-10 by B refuse               | 06-20 | refused
            review 06-01 by A refuse; review 06-10 by B               | 06-20 | valid until 08-09 by B
            # only a review that was entered later lifts a refusal, whatever its date
            review 06-10 by B; review 06-01 by A refuse               | 06-20 | refused
            review 06-10 by B; review 06-01 by A refuse; review 06-02 by C | 06-20 | valid until 08-09 by B
            review 06-10 by B; review 06-03 by A refuse; review 06-02 by C | 06-20 | refused
            # a refusal does not lapse, and counts even without a name or a day
            review 06-01 by A until 06-02 refuse                      | 12-31 | refused
            review 06-01 by A; review ? refuse                        | 06-20 | refused
            review 06-01 by A; review 06-05 refuse                    | 06-20 | refused
            # a go without a name or a day is nobody's word
            review 06-01                                              | 06-20 | missing
            review ? by A                                             | 06-20 | missing
            review 06-01 by A; review 06-05                           | 06-20 | valid until 07-31 by A
            # a newer visit asks for a new review
            visit 06-01; review 06-02 by A of 06-01                  | 06-20 | valid until 08-01 by A
            visit 06-01; visit 06-10; review 06-12 by A of 06-01    | 06-20 | outdated
            visit 06-01; visit 06-10; review 06-12 by A of 06-10    | 06-20 | valid until 08-11 by A
            visit 06-01; visit 06-21; review 06-12 by A of 06-01    | 06-20 | valid until 08-11 by A
            visit 06-10; review 06-09 by A                           | 06-20 | outdated
            visit 06-10; review 06-10 by A                           | 06-20 | valid until 08-09 by A
            visit ?; review 06-10 by A                               | 06-20 | outdated
            visit 06-01; visit ?; review 06-10 by A of 06-01        | 06-20 | outdated
            # outdated and expired: the new facts come first
            visit 06-10; review 06-09 by A until 06-11               | 06-20 | outdated
            """)
    void onADay(String papers, String day, String expected) {
        assertEquals(expected, state(papers, day));
    }

    @Test
    void onlyAValidReviewHolds() {
        LocalDate day = LocalDate.parse("2031-06-20");
        assertTrue(new ReviewState.Valid("A", day, day, "", "B").holds());
        assertFalse(new ReviewState.SignedOnce("A").holds());
        assertFalse(new ReviewState.Missing(day).holds());
        assertFalse(new ReviewState.Expired("A", day).holds());
        assertFalse(new ReviewState.Refused("A", "").holds());
        assertFalse(new ReviewState.Outdated("A", day).holds());
    }
}
