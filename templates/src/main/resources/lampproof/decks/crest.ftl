<#-- The line held at its crest: some tens of switching cycles. -->
<#import "blocks/blocks.ftl" as block>
<#import "${deck.topology}.ftl" as stage>
<@block.heading shows="Switching cycles with the line held at its crest, from the predicted steady state."/>
<@block.mains held=true/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter held=true/>
.end
