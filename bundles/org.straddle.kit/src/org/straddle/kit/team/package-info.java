/** The kits of an event as gear, what the plan asks of them, and the answers in words. */
package org.straddle.kit.team;
