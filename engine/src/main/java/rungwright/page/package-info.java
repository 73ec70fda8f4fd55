/**
 * Pages and calendars for people: whole documents that fetch nothing and run nothing. Start with
 * {@link rungwright.page.SheetPage} and {@link rungwright.page.SheetCalendar}.
 */
package rungwright.page;
