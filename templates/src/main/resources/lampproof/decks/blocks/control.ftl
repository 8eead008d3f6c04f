<#-- The control cell: a behavioural source gives the wanted gate state from the present one; the gate follows it
     through a small RC, which is the delay of the cell. Timers are 1 uA into 1 pF: 1 V for each us. A timer is
     discharged only when the gate is well past the threshold, or the discharge would undo what started the edge. -->
<#macro latch>
Rgate target gate 1e3
Cgate gate 0 ${cell.gateCapacitance} ic=1
Vone one 0 1
</#macro>

<#macro onTimer>
Ion 0 on_timer 1e-6
Con on_timer 0 1e-12 ic=0
Son on_timer 0 one gate discharge
</#macro>

<#macro offTimer>
Ioff 0 off_timer 1e-6
Coff off_timer 0 1e-12 ic=0
Soff off_timer 0 gate 0 discharge
</#macro>

<#macro discharge>
.model discharge sw(vt=0.8 vh=0.02 ron=1e3 roff=1e12)
</#macro>

<#-- Sense voltage at which the switch opens: flat, and following the filtered bus voltage. -->
<#macro reference>
Rfollow bus follow 1e6
Cfollow follow 0 ${cell.followCapacitance} ic=${start.busVoltage}
Breference reference 0 V = ${cell.flatVoltage} + ${cell.followGain}*V(follow)<#if cell.slopeVoltage gt 0> - ${cell.slopeVoltage}*V(on_timer)</#if>
</#macro>

<#-- Over-voltage of the output stops the cell for good; the trip node remembers it. -->
<#macro overVoltage output>
* Over-voltage limit: once the output has passed it, the cell stays off
Bover over 0 V = (${output} > ${cell.voltageLimit} || V(trip) > 0.5) ? 1 : 0
Rtrip over trip 1e3
Ctrip trip 0 20e-12 ic=0
</#macro>

<#-- What protection adds to the conditions: an on-time ends at the current limit, but not within the blanking time. -->
<#macro allowed><#if protected> && V(trip) < 0.5 && (V(sense) < ${cell.limitVoltage} || V(on_timer) < ${cell.limitBlankingTimer})</#if></#macro>
<#macro mayStart><#if protected> && V(trip) < 0.5</#if><#if starved> && V(bus) > ${setting.fullFrom}</#if></#macro>

<#-- The inductor current has come back; a cell that has none to wait for is started by a timer. -->
<#macro atZero><#if starved || protected>(I(Vinductor) < 0 || V(off_timer) > ${cell.restartTimer})<#else>I(Vinductor) < 0</#if></#macro>

<#macro boundary>
* Control: constant on-time; next cycle when the inductor current has come back to zero
<@latch/>
<@onTimer/>
<@offTimer/>
<@discharge/>
Btarget target 0 V = V(gate) > 0.5 ? ((V(on_timer) < ${cell.onTimer}<@allowed/>) ? 1 : 0) : ((<@atZero/> && V(off_timer) > ${cell.minOffTimer}<@mayStart/>) ? 1 : 0)
</#macro>

<#-- Whether the switch stays closed: below the reference or blanked, and not for too long. -->
<#macro carryOn>((V(sense) < V(reference) || V(on_timer) < ${cell.blankingTimer}) && V(on_timer) < ${cell.maxOnTimer})</#macro>

<#macro fixedOffTime>
* Control: opens at a current reference, closes after a fixed time
<@latch/>
<@onTimer/>
<@offTimer/>
<@discharge/>
<@reference/>
Btarget target 0 V = V(gate) > 0.5 ? ((<@carryOn/><@allowed/>) ? 1 : 0) : ((V(off_timer) > ${cell.offTimer}<@mayStart/>) ? 1 : 0)
</#macro>

<#-- A clock edge while the gate falls must wait until the timer is discharged: closing again before would hold the
     gate at its threshold. -->
<#macro struck>V(clock) > 0.5 && V(on_timer) < ${cell.closingTimer}</#macro>

<#macro fixedDuty>
<#if protected || starved>
* Control: a clock closes the switch for a fixed time
<@latch/>
<@onTimer/>
<@discharge/>
Vclock clock 0 PULSE(0 1 ${cell.phase} ${cell.edge} ${cell.edge} ${cell.clockWidth} ${cell.period})
Btarget target 0 V = V(gate) > 0.5 ? ((V(on_timer) < ${cell.onTimer}<@allowed/>) ? 1 : 0) : ((<@struck/><@mayStart/>) ? 1 : 0)
<#else>
* Control: fixed frequency and on-time
Vgate gate 0 PULSE(0 1 ${cell.phase} ${cell.edge} ${cell.edge} ${cell.width} ${cell.period})
</#if>
</#macro>

<#macro peakCurrent>
* Control: a clock closes the switch, a current reference opens it
<@latch/>
<@onTimer/>
<@discharge/>
<@reference/>
Vclock clock 0 PULSE(0 1 ${cell.phase} ${cell.edge} ${cell.edge} ${cell.clockWidth} ${cell.period})
Btarget target 0 V = V(gate) > 0.5 ? ((<@carryOn/><@allowed/>) ? 1 : 0) : ((<@struck/><@mayStart/>) ? 1 : 0)
</#macro>

<#assign protected = false>
<#assign starved = false>

<#-- Protected where an output is named; starved: it does not start while the bus is too low to supply it. -->
<#macro control output="" supplied=false>
<#assign protected = output != "">
<#assign starved = supplied>
<#if protected>
<@overVoltage output=output/>
</#if>
<#if cell.law == "boundary">
<@boundary/>
<#elseif cell.law == "fixed-off-time">
<@fixedOffTime/>
<#elseif cell.law == "peak-current">
<@peakCurrent/>
<#elseif cell.law == "fixed-duty">
<@fixedDuty/>
</#if>
</#macro>
