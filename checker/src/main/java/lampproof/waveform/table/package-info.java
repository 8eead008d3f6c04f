/** Text tables of simulators, oscilloscopes and spreadsheets. */
package lampproof.waveform.table;
