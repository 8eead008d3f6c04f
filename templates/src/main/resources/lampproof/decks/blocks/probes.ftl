<#-- What is written: one column for each probe that the checker knows. -->
<#macro probes coilSource diodeSink output outputNode lineCurrent="Vline" more=[] saved="">
* Probes
.save v(line) v(neutral) v(filtered) v(bus) v(${outputNode}) v(drain) v(gate)
.save i(${lineCurrent}) i(Vbridge) i(Vinductor) i(Vswitch) i(Vdiode) i(Vstring)
<#if saved?has_content>
.save ${saved}
</#if>
.control
set wr_singlescale
set wr_vecnames
set numdgt=11
run
* Where a time point falls next to a clock edge the step can collapse: once more, with other time points
if $sim_status > 0
  echo lampproof: tried again with shorter steps
  destroy all
  tran ${deck.shorterStep} ${deck.stop} 0 ${deck.shorterStep} uic
end
if $sim_status > 0
  quit 1
end
if time[length(time)-1] < ${deck.almostStop}
  quit 4
end
let line_voltage = v(line) - v(neutral)
let line_current = <#if lineCurrent == "Vline">-</#if>i(${lineCurrent})
let filtered_voltage = v(filtered) - v(neutral)
let bridge_voltage = abs(v(filtered) - v(neutral)) - v(bus)
let bridge_current = i(Vbridge)
let bus_voltage = v(bus)
let inductor_voltage = v(${coilSource}) - v(drain)
let inductor_current = i(Vinductor)
let switch_voltage = v(drain)
let switch_current = i(Vswitch)
let diode_voltage = v(drain) - v(${diodeSink})
let diode_current = i(Vdiode)
let output_voltage = ${output}
let string_current = i(Vstring)
let gate_voltage = v(gate)
<#list more as probe>
let ${probe.column} = ${probe.vector}
</#list>
wrdata ${deck.name}.csv line_voltage line_current filtered_voltage bridge_voltage bridge_current bus_voltage inductor_voltage inductor_current switch_voltage switch_current diode_voltage diode_current output_voltage string_current gate_voltage<#list more as probe> ${probe.column}</#list>
quit 0
.endc
</#macro>
