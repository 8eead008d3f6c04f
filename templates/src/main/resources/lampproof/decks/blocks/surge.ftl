<#-- Surge generator, coupled between line and neutral by a capacitor; a choke keeps the surge from the mains. -->
<#macro surge>
<#if event.wave == "ring">
* Surge: ring wave of 100 kHz behind its resistance
Bsurge generator neutral V = time < ${event.instant} ? 0 : ${event.ring.amplitude} * (1 - exp((${event.instant} - time) / ${event.ring.front})) * exp((${event.instant} - time) / ${event.ring.decay}) * cos(${event.ring.angularFrequency} * (time - ${event.instant}))
Rsurge generator surged ${event.impedance}
<#else>
* Surge: a charged capacitor makes 1.2/50 us open and 8/20 us shorted; the step in series with it is its charge
Vsurge charge neutral PULSE(0 ${event.charge} ${event.instant} ${event.edge} ${event.edge} 1)
Csurge charge struck ${event.generator.capacitance} ic=0
Rdischarge struck neutral ${event.generator.discharge}
Lsurge struck formed ${event.generator.inductance} ic=0
Rseries formed surged ${event.generator.series}
Routput surged neutral ${event.generator.output}
</#if>
Ccoupling coupled surged ${event.generator.coupling} ic=${start.lineVoltage}
Lchoke mains coupled ${event.generator.choke} ic=${start.filterCurrent}
Vport coupled line 0
* What lies between the lamp and its surroundings holds the neutral while the bridge blocks
Cstray neutral 0 100e-12
</#macro>
