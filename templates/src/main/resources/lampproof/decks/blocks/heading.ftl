<#-- Title, cautions and the figures that this deck settles. The title line is the simulator's own. -->
<#macro heading shows="">
* ${deck.title}
*
<#if shows != "">
* ${shows}
*
</#if>
* CAUTION: mains, the rectified bus and the string of this circuit can kill. A driver without isolation has no safe
* side. Local codes, the applicable product standards and licensed practice come first. A simulation is no proof of
* safety or compliance.
*
* Runs by hand: ngspice -b ${deck.name}.cir   It writes ${deck.name}.csv, which the checker reads.
*
* Predicted figures:
<#list deck.figures as figure>
*   ${figure}
</#list>
*
</#macro>
