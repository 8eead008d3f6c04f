<#-- The line held at its crest behind the artificial mains network. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="The line is held at its crest behind the artificial mains network: differential-mode noise only."/>
<@block.artificialNetwork/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter held=true lineProbe="Vport"/>
.end
