/**
 * What is noted of a sitting as it goes: the journal that becomes a notebook, the drafts that survive a kill, the files a
 * learner has said yes to.
 *
 * <p>May import every other room, and of the shell only {@code answer}.
 */
package monochord.shell.journal;
