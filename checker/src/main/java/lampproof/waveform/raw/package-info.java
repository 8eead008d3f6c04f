/** Raw files of SPICE simulators. */
package lampproof.waveform.raw;
