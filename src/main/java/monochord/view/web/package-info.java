/**
 * Notebooks as pages for a browser: {@link monochord.view.web.WebPage} is made of {@link monochord.view.web.PageSection}s and
 * written as one file. All markup goes through {@link monochord.view.web.Html}, which escapes whatever it is given.
 *
 * <p>Imports what {@code view} may.
 */
package monochord.view.web;
