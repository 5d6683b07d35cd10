/** May a team leave? One gate for each team and day, shut until every item of it is settled by the person it names. */
package org.straddle.check.gate;
