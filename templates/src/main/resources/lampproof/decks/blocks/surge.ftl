<#-- Surge generator, coupled between line and neutral by a capacitor; a choke keeps the surge from the mains. -->
<#macro surge>
<#if event.wave == "ring">
* Surge: ring wave of 100 kHz behind its resistance
Bsurge generator neutral V = time < ${event.instant} ? 0 : ${event.ringAmplitude} * (1 - exp((${event.instant} - time) / 0.533e-6)) * exp((${event.instant} - time) / 9.788e-6) * cos(6.283185307e5 * (time - ${event.instant}))
Rsurge generator surged ${event.impedance}
<#else>
* Surge: a charged capacitor makes 1.2/50 us open and 8/20 us shorted
Csurge charged neutral ${event.generator.capacitance} ic=${event.charge}
Rcharge charged neutral 1e6
Sstrike charged struck strike 0 strike
Vstrike strike 0 PULSE(0 1 ${event.instant} ${event.edge} ${event.edge} 1)
Rdischarge struck neutral ${event.generator.discharge}
Lsurge struck formed ${event.generator.inductance} ic=0
Rseries formed surged ${event.generator.series}
Routput surged neutral ${event.generator.output}
.model strike sw(vt=0.5 vh=0.1 ron=1e-3 roff=1e9)
</#if>
Ccoupling coupled surged ${event.generator.coupling} ic=${start.lineVoltage}
Lchoke mains coupled ${event.generator.choke} ic=${start.filterCurrent}
Vport coupled line 0
</#macro>
