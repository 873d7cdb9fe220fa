/**
 * Notebooks as pages for a browser: {@link monochord.page.web.WebPage} is made of {@link monochord.page.web.Section}s and
 * written as one file. All markup goes through {@link monochord.page.web.Html}, which escapes whatever it is given.
 *
 * <p>May import what {@code page} may.
 */
package monochord.page.web;
