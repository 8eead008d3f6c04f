<#-- The capacitor behind the bridge. -->
<#macro bus>
* Bus
Cbus bus 0 ${driver.busCapacitance} ic=${start.busVoltage}
</#macro>
