/** What README.md, DEVELOPERS.md and the documents of the folders state, compared with the program. */
package lampproof.documentation;
