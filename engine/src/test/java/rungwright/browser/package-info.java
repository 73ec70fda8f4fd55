/**
 * Pages as a real browser shows them, driven through its debugging protocol. Start with
 * {@link rungwright.browser.Browser}.
 */
package rungwright.browser;
