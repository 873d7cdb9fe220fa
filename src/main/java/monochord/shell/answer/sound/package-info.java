/** What is answered when something sounds. */
package monochord.shell.answer.sound;
