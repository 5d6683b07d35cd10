/**
 * How likely turns happen as published. A team is late by some minutes; drives spread that, and time in hand soaks it up. The
 * distribution is a histogram of minutes ({@link org.straddle.outlook.keeping.Delay}), carried from drive to stop to drive
 * along each day of a team by {@link org.straddle.outlook.keeping.DayKeeping}: the convolution of independent times, so no
 * random numbers. {@link org.straddle.outlook.keeping.PlanKeeping} is where to ask about a whole plan.
 */
package org.straddle.outlook.keeping;
