BeforeDiscovery {
    $cmdlets = (Get-Module LayerTools).ExportedCmdlets.Keys | Sort-Object | ForEach-Object { @{ Name = $_ } }
}

Describe 'Help for <Name>' -ForEach $cmdlets {
    BeforeAll {
        $help = Get-Help $Name -Full
        $common = [System.Management.Automation.Cmdlet]::CommonParameters + [System.Management.Automation.Cmdlet]::OptionalCommonParameters
        $parameters = (Get-Command $Name).Parameters.Values | Where-Object Name -NotIn $common
    }

    It 'has a synopsis and a description' {
        $help.Synopsis.Trim() | Should -Not -BeLike "$Name*" -Because 'help that the shell makes up begins with the syntax'
        ($help.description | Out-String).Trim() | Should -Not -BeNullOrEmpty
    }

    It 'describes every parameter, and no others' {
        $described = @($help.parameters.parameter | ForEach-Object { $_ })
        ($described.name | Where-Object { $_ -notin $common } | Sort-Object) | Should -Be ($parameters.Name | Sort-Object)
        foreach ($parameter in $described | Where-Object name -NotIn $common) {
            ($parameter.description | Out-String).Trim() | Should -Not -BeNullOrEmpty -Because $parameter.name
        }
    }

    It 'has at least three examples, each of which parses and names only parameters that exist' {
        $examples = @($help.examples.example)
        $examples.Count | Should -BeGreaterOrEqual 3
        foreach ($example in $examples) {
            $errors = $null
            $code = $example.code -replace '(?m)^PS ?\S*> ?'
            $tree = [System.Management.Automation.Language.Parser]::ParseInput($code, [ref] $null, [ref] $errors)
            $errors | Should -BeNullOrEmpty -Because $code
            $commands = $tree.FindAll({ $args[0] -is [System.Management.Automation.Language.CommandAst] }, $true)
            $commands | ForEach-Object { $_.GetCommandName() } | Should -Contain $Name -Because $code
            foreach ($command in $commands) {
                $info = Get-Command $command.GetCommandName() -ErrorAction Stop
                foreach ($element in $command.CommandElements | Where-Object { $_ -is [System.Management.Automation.Language.CommandParameterAst] }) {
                    { $info.ResolveParameter($element.ParameterName) } | Should -Not -Throw -Because "-$($element.ParameterName) in: $code"
                }
            }
        }
    }
}

Describe 'The page about the module' {
    It 'leads to every cmdlet and every other page' {
        $folder = Join-Path (Get-Module LayerTools).ModuleBase 'en-US'
        $page = Get-Content -Raw (Join-Path $folder 'about_LayerTools.help.txt')
        $named = ($page -split 'SEE ALSO')[-1].Split([char[]] ", `r`n", [StringSplitOptions]::RemoveEmptyEntries)
        $others = Get-ChildItem $folder -Filter 'about_LayerTools_*.help.txt' | ForEach-Object { $_.Name -replace '\.help\.txt$' }
        $named | Sort-Object | Should -Be (@((Get-Module LayerTools).ExportedCmdlets.Keys) + @($others) | Sort-Object)
    }
}
