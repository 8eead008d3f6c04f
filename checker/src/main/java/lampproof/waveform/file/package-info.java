/** Opens a waveform file and passes over its rows, as often as wanted. */
package lampproof.waveform.file;
