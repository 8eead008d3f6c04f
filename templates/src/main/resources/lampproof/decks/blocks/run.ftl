<#-- Gear integration: the trapezoidal rule rings on hard edges and can give false results. -->
<#macro run>
* Run
.options method=gear abstol=1e-7 vntol=1e-4 itl4=50
.tran ${deck.step} ${deck.stop} 0 ${deck.step} uic
</#macro>
