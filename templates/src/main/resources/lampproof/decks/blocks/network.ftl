<#-- Artificial mains network of CISPR 16-1-2: each line has 50 uH with 5 Ohm towards the mains and the 50 Ohm of a
     receiver towards earth; a capacitor keeps the line voltage from the receiver. -->
<#macro artificialNetwork>
* Mains, held at the crest of the line
Vline live earth DC ${start.mainsVoltage}
* Artificial mains network, line
Rlive live live_feed ${network.seriesResistance}
Llive live_feed terminal ${network.inductance} ic=${start.networkCurrent}
Clive terminal live_receiver 10e-6 ic=${start.liveVoltage}
Rlive_receiver live_receiver earth ${network.resistance}
* Artificial mains network, neutral
Rreturn earth return_feed ${network.seriesResistance}
Lreturn neutral return_feed ${network.inductance} ic=${start.networkCurrent}
Creturn neutral return_receiver 10e-6 ic=${start.returnVoltage}
Rreturn_receiver return_receiver earth ${network.resistance}
* The lamp
Vport terminal line 0
Rstray neutral 0 100e6
</#macro>
